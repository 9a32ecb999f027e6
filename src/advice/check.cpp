#include "advice/check.hpp"

#include <algorithm>
#include <utility>

#include "advice/cause.hpp"
#include "advice/corrector.hpp"
#include "advice/declaration_note.hpp"
#include "advice/kind_note.hpp"
#include "advice/note.hpp"
#include "judging/specialty.hpp"

namespace entrywise {

namespace {

const KindMiss* kind_missed(const Finding& finding, const Verdict& verdict) {
    const auto kind = std::find_if(verdict.kinds.begin(), verdict.kinds.end(), [&](const KindMiss& miss) {
        return miss.finding.attribute == finding.attribute;
    });
    return kind == verdict.kinds.end() ? nullptr : &*kind;
}

AdvisedFinding noted(const Finding& finding, const Verdict& verdict, const Check& check,
                     const PhraseBook& phrases) {
    AdvisedFinding result;
    result.finding = finding;
    if (finding.attribute == "declaration") {
        result.note = note_on_missing(verdict.missing, check.style);
    } else if (const KindMiss* const kind = kind_missed(finding, verdict)) {
        result.note = note_on_kind(*kind, check.style);
    } else {
        result.note = note_on(finding, check.beer, check.style, phrases, check.base_style);
    }
    return result;
}

/// Whether what is more likely in style than out of it may be missed on the other side too.
bool may_miss_either_way(const Finding& finding, const std::vector<Finding>& findings) {
    return is_likely_inside(finding) &&
           std::any_of(findings.begin(), findings.end(), [&finding](const Finding& other) {
               return other.section == finding.section && other.attribute == finding.attribute &&
                      other.direction != finding.direction;
           });
}

/// Adds where it comes from and what would bring it in.
void trace(AdvisedFinding& advised, Corrector& corrector, const Verdict& verdict, const Check& check,
           const PhraseBook& phrases) {
    const Finding& finding = advised.finding;
    if (finding.attribute == "declaration") {
        advised.corrections = {correction_of_missing(verdict.missing, check.style)};
    } else if (const KindMiss* const kind = kind_missed(finding, verdict)) {
        advised.causes = causes_of_kind(*kind);
        advised.corrections = {correction_of_kind(*kind, check.style, phrases)};
    } else if (may_miss_either_way(finding, check.sheet.findings)) {
        advised.causes = causes_of(finding, check.recipe, check.beer);
        advised.corrections = {
            "leave it: the middle is in style, and what the recipe leaves open takes it to either side"};
    } else {
        advised.causes = causes_of(finding, check.recipe, check.beer);
        corrector.correct(advised);
    }
}

bool asks_for_a_base(const Style& style, const std::vector<Declaration>& known) {
    return std::any_of(style.must_declare.begin(), style.must_declare.end(),
                       [&](const std::string& name) { return declaration_named(known, name).by_base_style; });
}

std::string basis_of(const Style& style, const std::optional<Style>& base_style, const PhraseBook& phrases) {
    if (!style.variant_of.empty() && !style.varies) {
        return "Judged by " + style.code + ", as the recipe declares it.";
    }
    if (!style.varies) {
        return {};
    }
    if (base_style) {
        return "Judged as " + base_style->code + " " + base_style->name + ", with what " + style.code +
               " asks besides.";
    }
    if (asks_for_a_base(style, phrases.declarations)) {
        return "The recipe names no base style, so that only what " + style.code +
               " itself states is judged.";
    }
    return "Some of " + style.code + " depends on the declared type; judged is what holds for all types.";
}

enum class Depth { at_a_glance, in_full };

Check check_of(Tasting tasting, Judged judged, const PhraseBook& phrases, Depth depth) {
    Check result;
    result.style = std::move(judged.style);
    result.base_style = std::move(judged.base_style);
    result.basis = std::move(judged.basis);
    Verdict& verdict = judged.verdict;
    result.recipe = std::move(tasting.recipe);
    result.beer = std::move(tasting.beer);
    result.profile = std::move(tasting.profile);
    result.sheet = std::move(verdict.sheet);
    for (const Finding& finding : result.sheet.findings) {
        result.findings.push_back(noted(finding, verdict, result, phrases));
    }
    result.cautions = cautions_of(result.recipe, result.beer);
    if (depth == Depth::in_full) {
        Corrector corrector(result, phrases);
        for (AdvisedFinding& advised : result.findings) {
            trace(advised, corrector, verdict, result, phrases);
        }
        add_new(corrector.cautions(), result.cautions);
    }
    for (const Strength& strength : result.sheet.strengths) {
        result.strengths.push_back({strength, note_on(strength, phrases)});
    }
    return result;
}

}  // namespace

Check check(const Recipe& recipe, const Style& style, const Handbook& handbook,
            const std::optional<Style>& base_style) {
    Tasting tasting = taste(recipe, handbook.perception);
    Judged by_style = judged(tasting, Impression(tasting.beer, tasting.profile), style, base_style, handbook,
                             Tariff(handbook.score_sheet));
    return check_of(std::move(tasting), std::move(by_style), handbook.phrases, Depth::in_full);
}

Judged judged(const Tasting& tasting, const Impression& impression, const Style& style,
              const std::optional<Style>& base_style, const Handbook& handbook, const Tariff& tariff) {
    Judged result;
    result.base_style = style.varies ? base_style : std::nullopt;
    result.style = result.base_style ? judged_style(style, *result.base_style) : style;
    result.basis = basis_of(style, result.base_style, handbook.phrases);
    result.verdict = verdict_on(tasting, impression, result.style, handbook, tariff);
    return result;
}

Check check_at_a_glance(Tasting tasting, Judged judged, const Handbook& handbook) {
    return check_of(std::move(tasting), std::move(judged), handbook.phrases, Depth::at_a_glance);
}

}  // namespace entrywise

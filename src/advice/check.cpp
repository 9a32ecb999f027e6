#include "advice/check.hpp"

#include <algorithm>

#include "advice/cause.hpp"
#include "advice/correction.hpp"
#include "advice/declaration_note.hpp"
#include "advice/kind_note.hpp"
#include "advice/note.hpp"
#include "brewing/brew.hpp"
#include "brewing/deviates.hpp"
#include "judging/declared.hpp"
#include "judging/kind.hpp"
#include "judging/specialty.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

namespace {

/// What is out of style without being too much or too little of anything.
struct BesideLevels {
    std::vector<Declaration> missing;
    std::vector<KindMiss> kinds;
};

std::vector<Finding> findings_of(const BesideLevels& beside, const ScoreSheet& score_sheet) {
    std::vector<Finding> findings;
    if (const auto missing = declaration_finding(beside.missing.size(), score_sheet)) {
        findings.push_back(*missing);
    }
    for (const KindMiss& miss : beside.kinds) {
        findings.push_back(miss.finding);
    }
    return findings;
}

AdvisedFinding advised(const Finding& finding, const BesideLevels& beside, const Check& check,
                       const PhraseBook& phrases) {
    if (finding.attribute == "declaration") {
        return {.finding = finding,
                .note = note_on_missing(beside.missing, check.style),
                .causes = {},
                .corrections = {correction_of_missing(beside.missing, check.style)}};
    }
    const auto kind = std::find_if(beside.kinds.begin(), beside.kinds.end(), [&](const KindMiss& miss) {
        return miss.finding.attribute == finding.attribute;
    });
    if (kind != beside.kinds.end()) {
        return {.finding = finding,
                .note = note_on_kind(*kind, check.style),
                .causes = causes_of_kind(*kind),
                .corrections = {correction_of_kind(*kind, check.style, phrases)}};
    }
    return {.finding = finding,
            .note = note_on(finding, check.beer, check.style, phrases, check.base_style),
            .causes = causes_of(finding, check.recipe, check.beer),
            .corrections = corrections_of(finding, check.recipe, check.beer, check.style,
                                          check.profile.perception, phrases)};
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

}  // namespace

Check check(const Recipe& recipe, const Style& style, const ScoreSheet& score_sheet,
            const Perception& perception, const PhraseBook& phrases, const std::optional<Style>& base_style) {
    Deviates deviates(usual_draws);
    Check result;
    result.recipe = recipe;
    result.base_style = style.varies ? base_style : std::nullopt;
    result.style = result.base_style ? judged_style(style, *result.base_style) : style;
    result.basis = basis_of(style, result.base_style, phrases);
    result.beer = brew(recipe, deviates);
    result.profile = sense(result.beer, perception, deviates);
    const BesideLevels beside{
        missing_declarations(recipe, style, phrases.declarations),
        kind_misses(recipe, result.beer, result.profile, result.style, score_sheet, phrases.kin)};
    result.sheet =
        judge(result.beer, result.profile, result.style, score_sheet, findings_of(beside, score_sheet));
    for (const Finding& finding : result.sheet.findings) {
        result.findings.push_back(advised(finding, beside, result, phrases));
    }
    for (const Strength& strength : result.sheet.strengths) {
        result.strengths.push_back({strength, note_on(strength, phrases)});
    }
    result.cautions = cautions_of(recipe, result.beer);
    return result;
}

}  // namespace entrywise

#include "advice/check.hpp"

#include <algorithm>
#include <utility>

#include "advice/cause.hpp"
#include "advice/correction.hpp"
#include "advice/declaration_note.hpp"
#include "advice/kind_note.hpp"
#include "advice/note.hpp"
#include "judging/specialty.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"

namespace entrywise {

namespace {

AdvisedFinding advised(const Finding& finding, const Verdict& verdict, const Check& check,
                       const PhraseBook& phrases) {
    if (finding.attribute == "declaration") {
        return {.finding = finding,
                .note = note_on_missing(verdict.missing, check.style),
                .causes = {},
                .corrections = {correction_of_missing(verdict.missing, check.style)}};
    }
    const auto kind = std::find_if(verdict.kinds.begin(), verdict.kinds.end(), [&](const KindMiss& miss) {
        return miss.finding.attribute == finding.attribute;
    });
    if (kind != verdict.kinds.end()) {
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

Check check(const Recipe& recipe, const Style& style, const Handbook& handbook,
            const std::optional<Style>& base_style) {
    const PhraseBook& phrases = handbook.phrases;
    Check result;
    result.base_style = style.varies ? base_style : std::nullopt;
    result.style = result.base_style ? judged_style(style, *result.base_style) : style;
    result.basis = basis_of(style, result.base_style, phrases);
    Tasting tasting = taste(recipe, handbook.perception);
    Verdict verdict = verdict_on(tasting, result.style, handbook);
    result.recipe = std::move(tasting.recipe);
    result.beer = std::move(tasting.beer);
    result.profile = std::move(tasting.profile);
    result.sheet = std::move(verdict.sheet);
    for (const Finding& finding : result.sheet.findings) {
        result.findings.push_back(advised(finding, verdict, result, phrases));
    }
    for (const Strength& strength : result.sheet.strengths) {
        result.strengths.push_back({strength, note_on(strength, phrases)});
    }
    result.cautions = cautions_of(result.recipe, result.beer);
    return result;
}

}  // namespace entrywise

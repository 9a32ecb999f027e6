#include "judging/verdict.hpp"

#include "judging/declared.hpp"

namespace entrywise {

namespace {

/// What is out of style without being too much or too little of anything.
std::vector<Finding> findings_beside_levels(const Verdict& verdict, const ScoreSheet& score_sheet) {
    std::vector<Finding> findings;
    if (const auto missing = declaration_finding(verdict.missing.size(), score_sheet)) {
        findings.push_back(*missing);
    }
    for (const KindMiss& miss : verdict.kinds) {
        findings.push_back(miss.finding);
    }
    return findings;
}

}  // namespace

Verdict verdict_on(const Tasting& tasting, const Style& style, const Handbook& handbook) {
    return verdict_on(tasting, Impression(tasting.beer, tasting.profile), style, handbook,
                      Tariff(handbook.score_sheet));
}

Verdict verdict_on(const Tasting& tasting, const Impression& impression, const Style& style,
                   const Handbook& handbook, const Tariff& tariff) {
    Verdict verdict;
    verdict.missing = missing_declarations(tasting.recipe, style, handbook.phrases.declarations);
    verdict.kinds =
        kind_misses(tasting.recipe, impression, style, handbook.score_sheet, handbook.phrases.kin);
    verdict.sheet = judge(impression, Yardstick(style, tasting.profile.perception), tariff,
                          findings_beside_levels(verdict, handbook.score_sheet));
    return verdict;
}

}  // namespace entrywise

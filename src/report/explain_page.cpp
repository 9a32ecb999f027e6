#include "report/explain_page.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/capitalized.hpp"
#include "report/explain_words.hpp"
#include "report/filled_template.hpp"
#include "report/number_table.hpp"
#include "report/page_values.hpp"
#include "report/picture_level.hpp"
#include "report/picture_points.hpp"
#include "report/picture_share.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

/// The strongest of the pulls, with a bar each.
Json pull_values(const std::vector<Pull>& pulls, bool by_source) {
    constexpr std::size_t most_pulls = 4;
    constexpr double least_share = 0.05;
    Json values = Json::array();
    for (const Pull& pull : pulls) {
        if (values.size() < most_pulls && pull.share >= least_share) {
            values.push_back({{"name", by_source ? pull.source : pull.step},
                              {"share", percent_text(pull.share)},
                              {"picture", share_picture("of it", pull.share)}});
        }
    }
    return values;
}

Json remark_values(const ExplainedRemark& remark, const Explanation& explanation, const PhraseBook& phrases) {
    const bool of_execution = remark.attribute == "fault";
    const Json givers = pull_values(remark.givers, true);
    const Json relief = pull_values(remark.relief, false);
    return {
        {"title", of_execution ? std::string("Execution, not recipe") : remark_title(remark, explanation)},
        {"standing", of_execution ? std::string() : standing_words(remark, explanation, phrases)},
        {"settings", joined(remark.settings, "; ")},
        {"measured", remark.measured},
        {"givers", givers},
        {"has_givers", !givers.empty()},
        {"relief", relief},
        {"has_relief", !relief.empty()},
        {"lowers", remark.direction == Direction::above},
        {"absent", remark.absent},
        {"corrections", joined(remark.corrections, "; or ")},
        {"elsewhere", remark.elsewhere.empty() ? std::string() : capitalized(remark.elsewhere) + '.'},
        {"elsewhere_first", of_execution || explains(remark.explained) == Explains::no}};
}

Json note_values(const ExplainedNote& note, const Explanation& explanation, const PhraseBook& phrases) {
    Json values;
    values["text"] = note.text;
    values["verdict"] = capitalized(verdict_words(note));
    values["picture"] = note.explained ? chance_picture("chance that the recipe explains it", *note.explained)
                                       : std::string();
    values["remarks"] = Json::array();
    for (const ExplainedRemark& remark : note.remarks) {
        values["remarks"].push_back(remark_values(remark, explanation, phrases));
    }
    values["unheard"] = Json::array();
    for (const HeardClause& clause : note.unheard) {
        values["unheard"].push_back({{"clause", clause.text}, {"why", unheard_words(clause)}});
    }
    return values;
}

Json score_values(const ExplainedScore& score, const ScoreSheet& score_sheet) {
    const ScoreComparison& comparison = score.comparison;
    const std::string name = capitalized(std::string(title_of(comparison.section)));
    return {{"name", name},
            {"given", shortest(comparison.given)},
            {"expected", span_words(fixed(comparison.low, 1), fixed(comparison.high, 1))},
            {"parts", std::string(parting_words(comparison))},
            {"behind", joined(score.behind, " ")},
            {"elsewhere", score.elsewhere},
            {"picture",
             score_picture(name, comparison.given, {comparison.expected, comparison.low, comparison.high},
                           score_sheet.points[comparison.section])}};
}

}  // namespace

Article explain_article(const Explanation& explanation, const Handbook& handbook) {
    Json values =
        head_values(explanation.recipe, explanation.style, "A judge’s notes, traced", "held against");
    values["summary"] = explain_summary_words(explanation);
    values["notes"] = Json::array();
    for (const ExplainedNote& note : explanation.notes) {
        values["notes"].push_back(note_values(note, explanation, handbook.phrases));
    }
    values["has_notes"] = !explanation.notes.empty();
    values["scores"] = Json::array();
    for (const ExplainedScore& score : explanation.scores) {
        values["scores"].push_back(score_values(score, handbook.score_sheet));
    }
    values["has_scores"] = !explanation.scores.empty();
    values["feedback"] = explanation.feedback;
    values["assumed"] = capitalized(joined(explanation.beer.assumptions, "; "));
    values["cautions"] = caution_values(explanation.cautions);
    values["has_cautions"] = !explanation.cautions.empty();
    return {fmt::format("{}: a judge's notes, traced", explanation.recipe.name),
            filled("explain.mustache", values)};
}

}  // namespace entrywise

#include "report/explain_json.hpp"

#include <string>

#include "advice/note.hpp"
#include "base/number.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

std::string word_of(Direction direction) {
    return direction == Direction::above ? "above" : "below";
}

Json style_json(const Explanation& explanation) {
    if (!explanation.style) {
        return nullptr;
    }
    Json result;
    result["guide"] = explanation.style->guide;
    result["code"] = explanation.style->code;
    result["name"] = explanation.style->name;
    return result;
}

Json match_json(const Standing& standing) {
    const RemarkTarget& target = standing.remark.target;
    Json result;
    result["section"] = target.section ? std::string(word_of(*target.section)) : std::string("any");
    result["attribute"] = target.attribute;
    result["direction"] = word_of(standing.remark.direction);
    result["explained"] = json_number(standing.explained, json_chance_decimals);
    if (target.section) {
        result["level"] = json_number(standing.finding.level, json_level_decimals);
        result["level_in_words"] = level_in_words(standing);
        result["accepted"] =
            standing.by_style
                ? Json::array({json_number(standing.finding.accepted_low, json_level_decimals),
                               json_number(standing.finding.accepted_high, json_level_decimals)})
                : Json(nullptr);
        result["held_by"] = std::string(word_of(standing.finding.section)) + '.' + standing.finding.attribute;
    }
    return result;
}

Json pulls_json(const std::vector<Pull>& pulls) {
    Json result = Json::array();
    for (const Pull& pull : pulls) {
        result.push_back({{"source", pull.source},
                          {"step", pull.step},
                          {"change", json_number(pull.change, json_level_decimals)},
                          {"share", json_number(pull.share, json_chance_decimals)}});
    }
    return result;
}

/// The numbers behind a remark, and what moves it, in words.
void add_causes(const ExplainedRemark& remark, Json& causes) {
    if (!remark.measured.empty()) {
        causes.push_back(remark.measured);
    }
    for (const std::string& setting : remark.settings) {
        causes.push_back(setting);
    }
    for (const Pull& pull : remark.relief) {
        causes.push_back(pull.step + ' ' + fixed(100.0 * pull.share, 0) + " %");
    }
}

Json remark_json(const ExplainedRemark& remark) {
    Json result;
    result["attribute"] = remark.attribute;
    result["direction"] = word_of(remark.direction);
    result["explained"] = json_number(remark.explained, json_chance_decimals);
    result["settings"] = remark.settings;
    result["relief"] = pulls_json(remark.relief);
    result["comes_from"] = pulls_json(remark.givers);
    result["corrections"] = remark.corrections;
    result["elsewhere"] = remark.elsewhere.empty() ? Json(nullptr) : Json(remark.elsewhere);
    return result;
}

Json note_json(const ExplainedNote& note) {
    Json result;
    result["text"] = note.text;
    result["matches"] = Json::array();
    Json causes = Json::array();
    Json remarks = Json::array();
    for (const ExplainedRemark& remark : note.remarks) {
        for (const Standing& standing : remark.standings) {
            result["matches"].push_back(match_json(standing));
        }
        add_causes(remark, causes);
        remarks.push_back(remark_json(remark));
    }
    result["explained"] = note.explained ? json_number(*note.explained, json_chance_decimals) : Json(nullptr);
    result["causes"] = std::move(causes);
    result["remarks"] = std::move(remarks);
    result["praises"] = note.praises;
    result["unknown"] = Json::array();
    for (const HeardClause& clause : note.unheard) {
        for (const UnknownWord& unknown : clause.unknown) {
            result["unknown"].push_back(
                {{"word", unknown.word},
                 {"nearest", unknown.nearest.empty() ? Json(nullptr) : Json(unknown.nearest)}});
        }
    }
    return result;
}

Json score_json(const ExplainedScore& score) {
    const ScoreComparison& comparison = score.comparison;
    Json result;
    result["section"] = std::string(word_of(comparison.section));
    result["given"] = json_number(comparison.given, json_points_decimals);
    result["expected"] =
        json_interval({comparison.expected, comparison.low, comparison.high}, json_points_decimals);
    result["parts"] = comparison.parts ? Json(word_of(*comparison.parts)) : Json(nullptr);
    result["behind"] = score.behind;
    result["elsewhere"] = score.elsewhere.empty() ? Json(nullptr) : Json(score.elsewhere);
    return result;
}

}  // namespace

Json explain_json(const Explanation& explanation) {
    Json document;
    document["format"] = "entrywise/explain/1";
    document["program"] = program_version();
    document["recipe"] = json_recipe(explanation.recipe);
    document["style"] = style_json(explanation);
    document["notes"] = Json::array();
    for (const ExplainedNote& note : explanation.notes) {
        document["notes"].push_back(note_json(note));
    }
    document["feedback"] = explanation.feedback;
    if (!explanation.scores.empty()) {
        document["scores"] = Json::array();
        for (const ExplainedScore& score : explanation.scores) {
            document["scores"].push_back(score_json(score));
        }
    }
    document["cautions"] = Json::array();
    for (const Caution& caution : explanation.cautions) {
        document["cautions"].push_back({{"kind", caution.kind}, {"text", caution.text}});
    }
    document["assumed"] = explanation.beer.assumptions;
    return document;
}

}  // namespace entrywise

#include "report/rank_json.hpp"

#include <fmt/format.h>

#include <string>

#include "report/sheet_json.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

Json name_json(const StyleName& name, const std::string& title) {
    return {{"guide", name.guide}, {"code", name.code}, {"name", title}};
}

Json why_json(const RankedStyle& style) {
    Json why = Json::array();
    if (style.sheet) {
        for (const Finding& finding : style.sheet->findings) {
            why.push_back(fmt::format("{} {:.1f}", id_of(finding), finding.points));
        }
    }
    for (const std::string& departure : style.departures) {
        why.push_back(departure);
    }
    return why;
}

Json table_json(const CompetitionTable* table) {
    return table == nullptr ? Json(nullptr) : Json{{"table", table->code}, {"name", table->name}};
}

Json competition_json(const Competition& competition) {
    Json result;
    result["name"] = competition.name;
    result["file"] = competition.file;
    result["entries_per_brewer"] =
        competition.entries_per_brewer ? Json(*competition.entries_per_brewer) : Json(nullptr);
    return result;
}

Json ranked_json(const RankedStyle& ranked, const ScoreSheet& score_sheet,
                 const std::optional<Competition>& competition) {
    Json result;
    result["style"] = name_json(ranked.name, ranked.title);
    if (ranked.base) {
        result["style"]["base"] = name_json(*ranked.base, ranked.base_title);
    }
    if (competition) {
        result["table"] = table_json(table_of(*competition, ranked.name));
    }
    result["at_risk"] =
        json_interval({ranked.at_risk.median, ranked.at_risk.low, ranked.at_risk.high}, json_points_decimals);
    result["within"] = json_number(ranked.within, json_chance_decimals);
    result["best"] = json_number(ranked.best, json_chance_decimals);
    result["distance"] = json_number(ranked.distance, json_points_decimals);
    result["why"] = why_json(ranked);
    if (ranked.sheet) {
        result["declare"] = Json::array();
        for (const Declaration& declaration : ranked.declarations) {
            result["declare"].push_back(declaration.name);
        }
        result["sheet"] = sheet_json(*ranked.sheet, score_sheet);
    }
    return result;
}

Json separation_json(const Separation& separation) {
    Json points = Json::array();
    for (const double cost : separation.points) {
        points.push_back(json_number(cost, json_points_decimals));
    }
    return {{"finding", separation.id}, {"points", points}};
}

}  // namespace

Json rank_json(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
               const std::optional<Competition>& competition) {
    Json document;
    document["format"] = "entrywise/rank/1";
    document["program"] = program_version();
    document["recipe"] = json_recipe(recipe);
    if (competition) {
        document["competition"] = competition_json(*competition);
    }
    document["ranking"] = Json::array();
    for (const RankedStyle& style : ranking.styles) {
        document["ranking"].push_back(ranked_json(style, score_sheet, competition));
    }
    document["declared_place"] = ranking.declared ? Json(*ranking.declared + 1) : Json(nullptr);
    document["separating"] = Json::array();
    for (const Separation& separation : ranking.separations) {
        document["separating"].push_back(separation_json(separation));
    }
    document["near_misses"] = ranking.near_misses;
    return document;
}

}  // namespace entrywise

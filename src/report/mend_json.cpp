#include "report/mend_json.hpp"

#include <string>
#include <variant>

#include "report/beer_json.hpp"
#include "report/finding_title.hpp"
#include "report/sheet_json.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

constexpr int amount_decimals = 3;

Json value_json(const Change::Value& value) {
    const double* number = std::get_if<double>(&value);
    return number != nullptr ? json_number(*number, amount_decimals) : Json(std::get<std::string>(value));
}

Json change_json(const Change& change) {
    Json result;
    result["what"] = change.what;
    result["from"] = value_json(change.from);
    result["to"] = value_json(change.to);
    result["unit"] = change.unit.empty() ? Json(nullptr) : Json(change.unit);
    return result;
}

Json cautions_json(const std::vector<Caution>& cautions) {
    Json result = Json::array();
    for (const Caution& caution : cautions) {
        result.push_back({{"kind", caution.kind}, {"text", caution.text}});
    }
    return result;
}

Json proposal_json(const Proposal& proposal, const Mending& mending, const ScoreSheet& score_sheet) {
    Json result;
    result["changes"] = Json::array();
    for (const Change& change : proposal.changes) {
        result["changes"].push_back(change_json(change));
    }
    result["before"] = sheet_json(mending.sheet, score_sheet);
    result["after"] = sheet_json(proposal.sheet, score_sheet);
    result["beer_after"] = beer_json(proposal.beer);
    result["findings_after"] = Json::array();
    for (const Finding& finding : proposal.sheet.findings) {
        result["findings_after"].push_back(id_of(finding));
    }
    result["disruption"] = json_number(proposal.disruption, json_points_decimals);
    result["brings_in_new"] = proposal.brings_in_new;
    result["no_longer_measured"] = proposal.no_longer_measured;
    result["cautions"] = cautions_json(proposal.cautions);
    return result;
}

}  // namespace

Json mend_json(const Mending& mending, const ScoreSheet& score_sheet) {
    Json document;
    document["format"] = "entrywise/mend/1";
    document["program"] = program_version();
    document["recipe"] = json_recipe(mending.recipe);
    document["style"] = style_json(mending.style);
    if (mending.base_style) {
        document["style"]["base"] = style_json(*mending.base_style);
    }
    document["proposals"] = Json::array();
    for (const Proposal& proposal : mending.proposals) {
        document["proposals"].push_back(proposal_json(proposal, mending, score_sheet));
    }
    document["elsewhere"] = Json::array();
    for (const RankedStyle& place : mending.elsewhere) {
        document["elsewhere"].push_back(
            {{"style", {{"guide", place.name.guide}, {"code", place.name.code}, {"name", place.title}}},
             {"at_risk", json_interval({place.at_risk.median, place.at_risk.low, place.at_risk.high},
                                       json_points_decimals)}});
    }
    document["stage"] = mending.stage == Stage::recipe ? "recipe" : "brewed";
    document["wanted"] = json_number(mending.wanted, json_points_decimals);
    document["target"] = json_number(mending.target, json_points_decimals);
    document["in_already"] = mending.is_in_already();
    document["undeclared"] = json_number(mending.undeclared, json_points_decimals);
    document["before"] = sheet_json(mending.sheet, score_sheet);
    document["beer_before"] = beer_json(mending.beer);
    return document;
}

}  // namespace entrywise

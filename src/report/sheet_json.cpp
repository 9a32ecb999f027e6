#include "report/sheet_json.hpp"

#include <string>

#include "report/sections.hpp"

namespace entrywise {

namespace {

Json at_risk_json(const PointsAtRisk& at_risk) {
    return json_interval({at_risk.median, at_risk.low, at_risk.high}, json_points_decimals);
}

}  // namespace

Json style_json(const Style& style) {
    Json result;
    result["guide"] = style.guide;
    result["code"] = style.code;
    result["name"] = style.name;
    return result;
}

Json sheet_json(const Sheet& sheet, const ScoreSheet& score_sheet) {
    Json result;
    result["sections"] = Json::array();
    for (const Section section : sheet_sections) {
        Json entry;
        entry["section"] = std::string(word_of(section));
        entry["points"] = json_number(score_sheet.points[section], json_points_decimals);
        entry["at_risk"] = at_risk_json(sheet.at_risk[section]);
        result["sections"].push_back(std::move(entry));
    }
    result["at_risk"] = at_risk_json(sheet.total);
    const ScoreRange& frame = sheet.if_otherwise_well_made;
    result["if_otherwise_well_made"] = {
        {"low", json_number(frame.low, 0)}, {"high", json_number(frame.high, 0)}, {"bands", frame.bands}};
    return result;
}

}  // namespace entrywise

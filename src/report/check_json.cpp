#include "report/check_json.hpp"

#include <string>

#include "report/beer_json.hpp"
#include "report/beer_numbers.hpp"
#include "report/sections.hpp"
#include "report/sheet_json.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

Json style_json(const Check& check) {
    Json result = style_json(check.style);
    if (check.base_style) {
        result["base"] = style_json(*check.base_style);
    }
    if (!check.basis.empty()) {
        result["basis"] = check.basis;
    }
    return result;
}

Json numbers_json(const Check& check) {
    Json result = Json::array();
    for (const NumberCheck& number : check.sheet.numbers) {
        const auto range = range_of(check.style.ranges, number.number);
        if (!range) {
            continue;
        }
        Json entry;
        entry["quantity"] = std::string(number_of(check.beer, number.number).key);
        entry["range"] = Json::array({json_or_null(range->low), json_or_null(range->high)});
        entry["within"] = json_number(number.within, json_chance_decimals);
        if (range->below_high) {
            entry["high_excluded"] = true;
        }
        result.push_back(std::move(entry));
    }
    return result;
}

Json profile_json(const Profile& profile) {
    Json result;
    for (const Section section : {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel}) {
        result[std::string(word_of(section))] = json_object(attribute_count);
    }
    for (const Attribute attribute : all_attributes()) {
        const Estimate<double>& level = profile.level[attribute];
        if (level.count() > 0) {
            result[std::string(word_of(section_of(attribute)))][std::string(word_of(attribute))] =
                json_interval(level.interval(), json_level_decimals);
        }
    }
    return result;
}

/// Whether a finding is a matter of a level; a missing declaration is not.
bool is_on_a_scale(const Finding& finding) {
    return finding.attribute == "color" || attribute_named(finding.section, finding.attribute).has_value();
}

Json strength_json(const AdvisedStrength& advised) {
    const Strength& strength = advised.strength;
    Json result;
    result["section"] = std::string(word_of(section_of(strength.attribute)));
    result["attribute"] = std::string(word_of(strength.attribute));
    result["level"] = json_number(strength.level, json_level_decimals);
    result["note"] = advised.note;
    result["accepted"] = Json::array({json_number(strength.accepted_low, json_level_decimals),
                                      json_number(strength.accepted_high, json_level_decimals)});
    return result;
}

Json finding_json(const AdvisedFinding& advised) {
    const Finding& finding = advised.finding;
    Json result;
    result["section"] = std::string(word_of(finding.section));
    result["attribute"] = finding.attribute;
    result["direction"] = finding.direction == Direction::above ? "above" : "below";
    result["noticed"] = json_number(finding.noticed, json_chance_decimals);
    result["points"] = json_number(finding.points, json_points_decimals);
    result["note"] = advised.note;
    result["causes"] = advised.causes;
    result["corrections"] = advised.corrections;
    result["id"] = id_of(finding);
    if (is_on_a_scale(finding)) {
        result["level"] = json_number(finding.level, json_level_decimals);
        result["accepted"] = Json::array({json_number(finding.accepted_low, json_level_decimals),
                                          json_number(finding.accepted_high, json_level_decimals)});
    }
    result["assumed"] = finding.assumed;
    return result;
}

}  // namespace

Json check_json(const Check& check, const ScoreSheet& score_sheet) {
    Json document;
    document["format"] = "entrywise/check/1";
    document["program"] = program_version();
    document["recipe"] = json_recipe(check.recipe);
    document["style"] = style_json(check);
    document["beer"] = beer_json(check.beer);
    document["numbers"] = numbers_json(check);
    document["profile"] = profile_json(check.profile);
    document["sheet"] = sheet_json(check.sheet, score_sheet);
    document["findings"] = Json::array();
    for (const AdvisedFinding& finding : check.findings) {
        document["findings"].push_back(finding_json(finding));
    }
    document["cautions"] = Json::array();
    for (const Caution& caution : check.cautions) {
        document["cautions"].push_back({{"kind", caution.kind}, {"text", caution.text}});
    }
    document["strengths"] = Json::array();
    for (const AdvisedStrength& strength : check.strengths) {
        document["strengths"].push_back(strength_json(strength));
    }
    document["assumed"] = check.beer.assumptions;
    return document;
}

}  // namespace entrywise

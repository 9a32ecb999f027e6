#include "report/style_json.hpp"

#include <optional>
#include <string>

#include "report/beer_numbers.hpp"
#include "report/sections.hpp"
#include "report/trait_words.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

constexpr int steps_decimals = 2;
constexpr int share_decimals = 3;

Json name_json(const Style& style) {
    Json result;
    result["guide"] = style.guide;
    result["code"] = style.code;
    result["name"] = style.name;
    return result;
}

/// A gravity has the unit that the other documents give it.
std::string unit_of(Number number) {
    const NumberWords words = words_for(number);
    return words.unit.empty() ? "SG" : std::string(words.unit);
}

Json range_json(const std::optional<PlainRange>& range) {
    return range ? Json::array({json_or_null(range->low), json_or_null(range->high)}) : Json(nullptr);
}

Json numbers_json(const Style& style) {
    Json result = Json::array();
    for (const Number number : guide_numbers()) {
        const auto range = range_of(style.ranges, number);
        if (!range) {
            continue;
        }
        Json entry;
        entry["quantity"] = std::string(words_for(number).key);
        entry["range"] = range_json(range);
        entry["unit"] = unit_of(number);
        if (range->below_high) {
            entry["high_excluded"] = true;
        }
        result.push_back(std::move(entry));
    }
    return result;
}

Json expectation_json(Attribute attribute, const Expectation& expectation) {
    const SensoryScale scale = scale_of(attribute);
    Json result;
    result["low"] = expectation.low;
    result["high"] = expectation.high;
    result["words"] = Json::array(
        {std::string(word_for(scale, expectation.low)), std::string(word_for(scale, expectation.high))});
    result["assumed"] = expectation.assumed;
    return result;
}

Json expected_json(const Style& style) {
    Json result;
    for (const Section section : {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel}) {
        result[std::string(word_of(section))] = Json::object();
    }
    for (const Attribute attribute : all_attributes()) {
        if (const auto& expectation = style.expected[attribute]) {
            result[std::string(word_of(section_of(attribute)))][std::string(word_of(attribute))] =
                expectation_json(attribute, *expectation);
        }
    }
    return result;
}

Json declarations_json(const std::vector<std::string>& names, const Style& style,
                       const std::vector<Declaration>& known) {
    Json result = Json::array();
    for (const std::string& name : names) {
        const Declaration declaration = declaration_named(known, name);
        Json entry;
        entry["name"] = name;
        entry["said"] = declaration.said;
        entry["keys"] = declaration.keys;
        entry["by_base_style"] = declaration.by_base_style;
        entry["choices"] = choices_in(declaration, style.code);
        result.push_back(std::move(entry));
    }
    return result;
}

Json custom_json(const Custom& custom) {
    Json result;
    result["yeast"] = {{"typical", custom.yeast_typical}, {"possible", custom.yeast_possible}};
    result["hops"] = {{"typical", custom.hops_typical},
                      {"possible", custom.hops_possible},
                      {"unusual", custom.hops_unusual}};
    result["dry_hop"] = custom.dry_hop.empty() ? Json(nullptr) : Json(custom.dry_hop);
    result["grist"] = {{"base", custom.grist_base},
                       {"typical", custom.grist_typical},
                       {"possible", custom.grist_possible},
                       {"unusual", custom.grist_unusual}};
    result["carbonation"] = custom.carbonation ? Json{{"low", custom.carbonation->low.value()},
                                                      {"high", custom.carbonation->high.value()},
                                                      {"unit", "vol"}}
                                               : Json(nullptr);
    result["breadth"] = custom.breadth;
    return result;
}

/// {"section", "attribute"}, or {"quantity"} for a number.
Json trait_json(const Trait& trait) {
    Json result;
    if (const auto* number = std::get_if<Number>(&trait)) {
        result["quantity"] = std::string(words_for(*number).key);
        return result;
    }
    const auto attribute = std::get<Attribute>(trait);
    result["section"] = std::string(word_of(section_of(attribute)));
    result["attribute"] = std::string(word_of(attribute));
    return result;
}

Json contrast_json(const Contrast& contrast) {
    Json result = trait_json(contrast.trait);
    result["steps"] = json_number(contrast.steps, steps_decimals);
    result["overlap"] = json_number(contrast.overlap, share_decimals);
    result["meets"] = contrast.meets;
    result["second_is"] = contrast.steps <= 0.0 ? "the same" : contrast.second_is_higher ? "above" : "below";
    return result;
}

Json accepted_json(const Style& style, const Trait& trait) {
    if (const auto* number = std::get_if<Number>(&trait)) {
        return range_json(range_of(style.ranges, *number));
    }
    const auto& expectation = style.expected[std::get<Attribute>(trait)];
    return expectation ? Json::array({expectation->low, expectation->high}) : Json(nullptr);
}

Json contrasts_json(const StyleComparison& comparison, const std::vector<Contrast>& contrasts) {
    Json result = Json::array();
    for (const Contrast& contrast : contrasts) {
        Json entry = contrast_json(contrast);
        entry["accepted"] = Json::array({accepted_json(comparison.first, contrast.trait),
                                         accepted_json(comparison.second, contrast.trait)});
        result.push_back(std::move(entry));
    }
    return result;
}

Json attributes_json(const std::vector<Attribute>& attributes) {
    Json result = Json::array();
    for (const Attribute attribute : attributes) {
        result.push_back(trait_json(attribute));
    }
    return result;
}

Json lists_json(const std::vector<std::string>& first, const std::vector<std::string>& second) {
    const WordsApart apart = words_apart(first, second);
    return {{"first_alone", apart.first_alone}, {"second_alone", apart.second_alone}, {"both", apart.both}};
}

Json neighbors_json(const std::vector<Neighbor>& neighbors) {
    Json result = Json::array();
    for (const Neighbor& neighbor : neighbors) {
        Json entry;
        entry["code"] = neighbor.code;
        entry["name"] = neighbor.name.empty() ? Json(nullptr) : Json(neighbor.name);
        entry["said"] = neighbor.said.empty() ? Json(nullptr) : Json(neighbor.said);
        entry["apart"] = Json::array();
        for (const Contrast& contrast : neighbor.apart) {
            entry["apart"].push_back(contrast_json(contrast));
        }
        result.push_back(std::move(entry));
    }
    return result;
}

}  // namespace

Json style_list_json(const std::vector<Style>& styles) {
    Json document;
    document["format"] = "entrywise/styles-list/1";
    document["program"] = program_version();
    document["styles"] = Json::array();
    for (const Style& style : styles) {
        Json entry = name_json(style);
        entry["category"] = style.category;
        entry["varies"] = style.varies;
        entry["numbers"] = numbers_json(style);
        document["styles"].push_back(std::move(entry));
    }
    return document;
}

Json style_json(const Style& shown_style, const Surroundings& surroundings, const PhraseBook& phrases) {
    Json document;
    document["format"] = "entrywise/styles-show/1";
    document["program"] = program_version();
    document["style"] = name_json(shown_style);
    document["category"] = shown_style.category;
    document["fermentation"] =
        shown_style.fermentation.empty() ? Json(nullptr) : Json(shown_style.fermentation);
    document["varies"] = shown_style.varies;
    document["variants"] = Json::array();
    for (const Style& variant : surroundings.variants) {
        document["variants"].push_back(variant.code);
    }
    document["numbers"] = numbers_json(shown_style);
    document["expected"] = expected_json(shown_style);
    document["notes"] = {{"hop", shown_style.hop_notes},
                         {"malt", shown_style.malt_notes},
                         {"ester", shown_style.ester_notes},
                         {"phenol", shown_style.phenol_notes}};
    document["grist"] = {{"expected", shown_style.grist_expected},
                         {"allowed", shown_style.grist_allowed},
                         {"inappropriate", shown_style.grist_inappropriate}};
    document["declares"] = {
        {"must", declarations_json(shown_style.must_declare, shown_style, phrases.declarations)},
        {"may", declarations_json(shown_style.may_declare, shown_style, phrases.declarations)}};
    document["custom"] = custom_json(shown_style.custom);
    document["neighbors"] = neighbors_json(surroundings.neighbors);
    return document;
}

Json style_comparison_json(const StyleComparison& comparison) {
    const Style& first = comparison.first;
    const Style& second = comparison.second;
    Json document;
    document["format"] = "entrywise/styles-compare/1";
    document["program"] = program_version();
    document["styles"] = Json::array({name_json(first), name_json(second)});
    document["separating"] = contrasts_json(comparison, comparison.apart);
    document["contrasts"] = contrasts_json(comparison, comparison.contrasts);
    document["first_alone"] = attributes_json(comparison.first_alone);
    document["second_alone"] = attributes_json(comparison.second_alone);
    document["custom"] = {
        {"yeast", lists_json(first.custom.yeast_typical, second.custom.yeast_typical)},
        {"hops", lists_json(first.custom.hops_typical, second.custom.hops_typical)},
        {"grist_base", lists_json(first.custom.grist_base, second.custom.grist_base)},
        {"grist_typical", lists_json(first.custom.grist_typical, second.custom.grist_typical)}};
    document["declares"] = {{"must", lists_json(first.must_declare, second.must_declare)},
                            {"may", lists_json(first.may_declare, second.may_declare)}};
    document["can_be_both"] = exclusive(comparison).empty();
    return document;
}

}  // namespace entrywise

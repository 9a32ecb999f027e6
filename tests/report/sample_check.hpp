#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "advice/check.hpp"
#include "base/text.hpp"

namespace entrywise {

/// Eleven draws around a middle, evenly spread: the median is the middle, the 80 % interval reaches four
/// steps to either side.
template <class Quantity>
Estimate<Quantity> draws_around(Quantity middle, Quantity step) {
    std::vector<Quantity> draws;
    for (int index = -5; index <= 5; ++index) {
        draws.push_back(middle + step * static_cast<double>(index));
    }
    return Estimate<Quantity>(std::move(draws));
}

inline Beer sample_beer() {
    Beer beer;
    beer.original_gravity = {draws_around(1.062 * specific_gravity, 0.001 * specific_gravity),
                             {{"pale ale malt", {10, 5}, 0.88}, {"crystal malt, medium", {11, 5}, 0.12}}};
    beer.final_gravity = draws_around(1.011 * specific_gravity, 0.0004 * specific_gravity);
    beer.original_extract = draws_around(15.2 * plato, 0.2 * plato);
    beer.apparent_extract = draws_around(2.8 * plato, 0.1 * plato);
    beer.real_extract = draws_around(5.1 * plato, 0.1 * plato);
    beer.apparent_attenuation = draws_around(0.81 * fully_attenuated, 0.005 * fully_attenuated);
    beer.alcohol = draws_around(6.7 * percent_by_volume, 0.1 * percent_by_volume);
    beer.bitterness = {draws_around(78.0 * ibu, 2.0 * ibu), {{"Columbus, 43 g at 60 min", {14, 5}, 0.8}}};
    beer.other_bitterness = {71.0 * ibu, 83.0 * ibu, 66.0 * ibu};
    beer.color = {draws_around(9.1 * srm, 0.3 * srm), {{"crystal malt, medium", {11, 5}, 0.6}}};
    beer.carbonation = draws_around(2.5 * volume_of_co2, 0.05 * volume_of_co2);
    beer.assumptions = {"water boils off at 3 L/h", "yeast in good health"};
    return beer;
}

inline ScoreSheet sample_score_sheet() {
    ScoreSheet score_sheet;
    score_sheet.points[Section::aroma] = 12.0;
    score_sheet.points[Section::appearance] = 3.0;
    score_sheet.points[Section::flavor] = 20.0;
    score_sheet.points[Section::mouthfeel] = 5.0;
    score_sheet.points[Section::overall] = 10.0;
    return score_sheet;
}

inline Style sample_style() {
    Style style;
    style.guide = "harbor-2030";
    style.code = "7C";
    style.name = "Quay Pale Bière";
    style.ranges.original_gravity =
        Range<SpecificGravity>{1.056 * specific_gravity, 1.070 * specific_gravity};
    style.ranges.alcohol = Range<AlcoholByVolume>{5.5 * percent_by_volume, 7.5 * percent_by_volume, true};
    style.ranges.bitterness = Range<Bitterness>{40.0 * ibu, 70.0 * ibu};
    style.ranges.color = Range<Color>{{}, 14.0 * srm};
    style.expected[Attribute::flavor_bitterness] = Expectation{4.0, 6.0, false};
    style.expected[Attribute::aroma_hop] = Expectation{3.0, 5.0, true};
    style.must_declare = {"strength"};
    return style;
}

inline Sheet sample_sheet() {
    Sheet sheet;
    sheet.numbers = {{Number::original_gravity, 1.0},
                     {Number::alcohol, 0.91},
                     {Number::bitterness, 0.09},
                     {Number::color, 0.996}};
    sheet.at_risk[Section::flavor] = {1.9, 0.8, 3.1};
    sheet.at_risk[Section::overall] = {0.6, 0.1, 1.2};
    sheet.total = {2.5, 0.9, 4.3};
    sheet.if_otherwise_well_made = {34.0, 41.0, {"very good", "excellent"}};
    sheet.findings = {{Section::flavor, "bitterness", Direction::above, 0.64, 1.9, 6.8, 4.0, 6.0, false}};
    sheet.attributes_checked = 2;
    sheet.attributes_not_described = 38;
    return sheet;
}

/// A check made by hand: one number outside, one finding, a name that tries to steer the terminal and one
/// with letters beyond ASCII.
inline Check sample_check() {
    Check check;
    check.recipe.name = "Slack\033[31m Tide";
    check.recipe.file =
        "recipes/a-rather-long-folder-name/another-long-folder-name/and-one-more/slack-tide.yaml";
    check.recipe.measured.original_gravity = Uncertain<SpecificGravity>{1.062 * specific_gravity, {}};
    check.style = sample_style();
    check.beer = sample_beer();
    check.profile.level[Attribute::flavor_bitterness] = Estimate<double>({6.2, 6.8, 7.4});
    check.profile.level[Attribute::aroma_hop] = Estimate<double>({4.0, 4.0, 4.0});
    check.sheet = sample_sheet();
    check.findings = {
        {check.sheet.findings.front(),
         "Bitterness lingers harshly and outruns the malt.",
         {"Columbus, 43 g at 60 min, gives 80 % of it", "a high attenuation leaves little to balance it"},
         {"take 8 g less Columbus", "mash at 68 °C"},
         {}}};
    check.cautions = {{"allergen", "Holds gluten: pale ale malt."}};
    return check;
}

/// The lines of a text with everything left out that only paints.
inline std::vector<std::string> unpainted_lines(std::string_view text) {
    std::vector<std::string> lines(1);
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '\033') {
            at = text.find('m', at);
        } else if (text[at] == '\n') {
            lines.emplace_back();
        } else {
            lines.back() += text[at];
        }
    }
    return lines;
}

inline std::size_t widest_line(std::string_view text) {
    std::size_t widest = 0;
    for (const std::string& line : unpainted_lines(text)) {
        widest = std::max(widest, character_count(line));
    }
    return widest;
}

}  // namespace entrywise

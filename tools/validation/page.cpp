#include "tools/validation/page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/number.hpp"
#include "tests/published/kettle_bitterness.hpp"
#include "tools/validation/markdown.hpp"
#include "tools/validation/weakness.hpp"

namespace entrywise {

namespace {

std::string at_a_glance(const std::vector<Quantity>& quantities) {
    std::string text = "## At a glance\n\n";
    text += paragraph(
        "*measured*: no constant was set by it. *measured, seen*: constants were set by these very "
        "values. *printed table*: a table of physics or of the trade. *own formula*: what the author of "
        "a formula prints of it, which shows that it is written down right and no more. Errors are ours "
        "less theirs; bias is their mean. Formulas without an interval are one step of an estimate that "
        "has one.");
    text +=
        head({"Quantity", "Evidence", "Values", "Median absolute error", "Bias", "In the 80 % interval"}, 2);
    for (const Quantity& quantity : quantities) {
        const Errors errors = errors_of(quantity.values);
        text += row({quantity.name, word_of(quantity.evidence), fmt::format("{}", errors.count),
                     with_unit(fixed(errors.median_absolute, quantity.decimals), quantity.unit),
                     with_sign(errors.bias, quantity.decimals), inside_in_words(errors)});
    }
    return text + '\n';
}

std::string formulas_side_by_side(const std::vector<BitternessFormula>& formulas) {
    std::string text = "## Bitterness in the laboratory, by each formula\n\n";
    text += paragraph(
        fmt::format("{}; IBU by ASBC Beer-23. To the classical formulas a steep is a boil, as they know "
                    "no temperature. From a recipe, ours takes the usual 12 ± 8 min until the wort is "
                    "cold; these worts were chilled quickly.",
                    published::boils_and_steeps));
    std::vector<std::string> names{"Brew", "Measured"};
    for (const BitternessFormula& formula : formulas) {
        names.push_back(formula.name);
    }
    text += head(names);
    for (std::size_t brew = 0; brew < formulas.front().values.size(); ++brew) {
        const Comparison& first = formulas.front().values[brew];
        std::vector<std::string> cells{first.what, fixed(first.outside, 1)};
        for (const BitternessFormula& formula : formulas) {
            cells.push_back(fixed(formula.values[brew].ours, 1));
        }
        text += row(cells);
    }
    text += '\n' + head({"Formula", "Median absolute error", "Bias", "Root mean square error", "Worst"});
    for (const BitternessFormula& formula : formulas) {
        const Errors errors = errors_of(formula.values);
        const auto worst = std::max_element(formula.values.begin(), formula.values.end(),
                                            [](const Comparison& left, const Comparison& right) {
                                                return std::abs(left.error()) < std::abs(right.error());
                                            });
        text += row({formula.name, fixed(errors.median_absolute, 1), with_sign(errors.bias, 1),
                     fixed(errors.root_mean_square, 1), with_sign(worst->error(), 1)});
    }
    return text + '\n';
}

std::string agreement(const std::map<Attribute, testing::Agreement>& maps,
                      const std::map<Attribute, testing::Agreement>& guides) {
    std::string text = "## What is sensed, beside the words of a guide that no fit has read\n\n";
    text += paragraph(
        "Each style of Brewers Association, Beer Style Guidelines, 2025, at the middle of its own "
        "numbers: how often the level that the maps give is no more than one step outside what the same "
        "style says in words. Rounded, the level is taken as the nearest word, as a check prints it; "
        "unrounded, almost a step beside is already too far. Hops are read from what is customary for "
        "the style, as no number of a guide tells of late hops. Agreement of a guide with itself is no "
        "agreement of judges.");
    text += paragraph(
        "Beside it, as a yardstick, how often the two guides agree with each other: the middle of what Beer "
        "Judge Certification Program, Beer Style Guidelines, 2021, which the maps are fitted to, says of the "
        "same or the nearest style (`tests/data/nearest-styles.tsv`), taken in the place of what the maps "
        "give.");
    text +=
        head({"Attribute", "Maps: styles", "Rounded", "Unrounded", "Guides: styles", "Rounded", "Unrounded"});
    for (const auto& [attribute, of_maps] : maps) {
        const testing::Agreement& of_guides = guides.at(attribute);
        text += row({name_in_words(attribute), fmt::format("{}", of_maps.count), fixed(of_maps.words(), 2),
                     fixed(of_maps.levels(), 2), fmt::format("{}", of_guides.count),
                     fixed(of_guides.words(), 2), fixed(of_guides.levels(), 2)});
    }
    return text + '\n';
}

std::string all_values(const std::vector<Quantity>& quantities) {
    std::string text = "## Every published value\n\n";
    text += paragraph(
        "The values stand in `tests/published/`, where the tests read them too. Common practice, order "
        "and direction are checked by the tests alone.");
    for (const Quantity& quantity : quantities) {
        text += "### " + with_unit(quantity.name, quantity.unit.empty() ? "" : "(" + quantity.unit + ")") +
                "\n\n";
        text += paragraph(fmt::format("{}: {}.", word_of(quantity.evidence), quantity.source));
        const bool has_interval = quantity.values.front().interval.has_value();
        std::vector<std::string> names{"", "Published", "Ours", "Error"};
        if (has_interval) {
            names.emplace_back("80 % interval");
        }
        text += head(names);
        for (const Comparison& value : quantity.values) {
            std::vector<std::string> cells{value.what, fixed(value.outside, quantity.decimals),
                                           fixed(value.ours, quantity.decimals),
                                           with_sign(value.error(), quantity.decimals)};
            if (value.interval) {
                cells.push_back(fmt::format("{} to {}{}", fixed(value.interval->low, quantity.decimals),
                                            fixed(value.interval->high, quantity.decimals),
                                            value.is_inside() ? "" : ", missed"));
            }
            text += row(cells);
        }
        text += '\n';
    }
    text.pop_back();
    return text;
}

}  // namespace

std::string name_in_words(Attribute attribute) {
    std::string name = fmt::format("{} {}", word_of(section_of(attribute)), word_of(attribute));
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

std::string page_of(const Accuracy& accuracy) {
    const bool worked_out = accuracy.real_beers.text != never_worked_out(real_beers_section).text;
    const bool of_earlier_state =
        worked_out && accuracy.real_beers.text.find('`' + accuracy.state + '`') == std::string::npos;
    std::string text = "# How accurate the numbers are\n\n";
    text += paragraph(fmt::format(
        "Written by `tools/validate`; never edited. State of the estimates: `{}`, which "
        "changes when the demo beers come out otherwise.{}",
        accuracy.state, of_earlier_state ? " The figures of real recipes are of an earlier state." : ""));
    return text + what_is_weak(accuracy) + at_a_glance(accuracy.quantities) + marked(accuracy.real_beers) +
           '\n' + formulas_side_by_side(accuracy.formulas) +
           agreement(accuracy.second_guide, accuracy.guide_beside_guide) + marked(accuracy.ranking) + '\n' +
           all_values(accuracy.quantities);
}

}  // namespace entrywise

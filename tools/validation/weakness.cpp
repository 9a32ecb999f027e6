#include "tools/validation/weakness.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "tools/validation/markdown.hpp"

namespace entrywise {

namespace {

std::string weak_words(const std::map<Attribute, testing::Agreement>& agreements) {
    constexpr double poor = 0.90;
    std::vector<std::pair<double, std::string>> weak;
    for (const auto& [attribute, agreement] : agreements) {
        if (agreement.levels() < poor) {
            weak.emplace_back(agreement.levels(), fmt::format("{} {:.0f} % of {}", name_in_words(attribute),
                                                              100.0 * agreement.levels(), agreement.count));
        }
    }
    std::sort(weak.begin(), weak.end());
    std::vector<std::string> texts;
    for (const auto& each : weak) {
        texts.push_back(each.second);
    }
    return fmt::format("{}", fmt::join(texts, ", "));
}

std::string unchecked_words(const std::map<Attribute, testing::Agreement>& agreements) {
    std::vector<std::string> names;
    for (const Attribute attribute : all_attributes()) {
        if (agreements.find(attribute) == agreements.end()) {
            names.push_back(name_in_words(attribute));
        }
    }
    return fmt::format("{}", fmt::join(names, ", "));
}

std::size_t count_of(const std::vector<Quantity>& quantities, bool (*counts)(const Quantity&)) {
    std::size_t count = 0;
    for (const Quantity& quantity : quantities) {
        count += counts(quantity) ? quantity.values.size() : 0;
    }
    return count;
}

/// The highest value from outside.
double highest_of(const std::vector<Comparison>& values) {
    double highest = values.front().outside;
    for (const Comparison& value : values) {
        highest = std::max(highest, value.outside);
    }
    return highest;
}

std::string never_measured() {
    return item(
               "**Never held against measured beer: color, carbonation, haze, head, hop aroma, esters, "
               "phenols, "
               "diacetyl, sulfur, sourness, what dry hops make fermentable, and how hop aroma fades.** No "
               "set of recipes with measured "
               "colors was "
               "found; the curve from malt to color was drawn through older formulas, and its spread is a "
               "working "
               "value.") +
           item(
               "**Never held against judges: points at risk.** No score sheets of beers with known recipes "
               "were at "
               "hand. What a miss costs is typical, not measured. The weights of the ranking were fitted to "
               "the same "
               "recipes that the README tells its success on.");
}

std::string weak_bitterness(const Quantity& brews) {
    return item(
        fmt::format("**Bitterness rests on {} brews of one author**, small, of whole hops, each with one "
                    "addition, none above "
                    "{:.0f} IBU. Two constants of the chain (survival, solubility) were fitted to them, so "
                    "that the agreement "
                    "proves little. No beer with pellets, several additions or a dry hop was measured whole. "
                    "The interval that a "
                    "check states holds {} of them, too few to say whether it is right.",
                    brews.values.size(), highest_of(brews.values), errors_of(brews.values).inside));
}

std::string weak_evidence(const std::vector<Quantity>& quantities) {
    const std::size_t all = count_of(quantities, [](const Quantity&) { return true; });
    const std::size_t independent = count_of(
        quantities, [](const Quantity& quantity) { return quantity.evidence == Evidence::measured; });
    const std::size_t from_memory = count_of(quantities, [](const Quantity& quantity) {
        return quantity.source.find("from memory") != std::string::npos;
    });
    return item(
        fmt::format("**Of the {} comparisons below only {} are with measurements that no constant was set "
                    "by**, nearly all of "
                    "them of one study of extract and alcohol. The others are with tables, with what authors "
                    "print of their own "
                    "formulas, and with measurements that the program has seen. {} are with tables that are "
                    "quoted from memory in "
                    "whole or in part.",
                    all, independent, from_memory));
}

}  // namespace

std::string what_is_weak(const Accuracy& accuracy) {
    return "## What is weak\n\n" + never_measured() + weak_bitterness(accuracy.quantities.front()) +
           marked(accuracy.real_beers_in_short) +
           item(fmt::format(
               "**Words that agree poorly with the guide that no fit has read**, by the level before it "
               "is rounded: {}.",
               weak_words(accuracy.second_guide))) +
           item(fmt::format("**Words that no guide's numbers can check at all**: {}.",
                            unchecked_words(accuracy.second_guide))) +
           weak_evidence(accuracy.quantities) + '\n';
}

}  // namespace entrywise

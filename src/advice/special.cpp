#include "advice/special.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "base/text.hpp"

namespace entrywise {

namespace {

/// The words by which styles speak of what is special, in their grist and in what is customary.
struct Word {
    std::string_view word;
    Special special;
};

constexpr std::array<Word, 41> words{{
    {"fruit", Special::fruit},
    {"grape", Special::fruit},
    {"fruit-peel", Special::fruit},
    {"spice", Special::spice},
    {"spices", Special::spice},
    {"herb", Special::spice},
    {"herbs", Special::spice},
    {"vegetable", Special::spice},
    {"spice-herb-vegetable", Special::spice},
    {"coriander", Special::spice},
    {"orange-peel", Special::spice},
    {"juniper", Special::spice},
    {"salt", Special::spice},
    {"licorice", Special::spice},
    {"coffee", Special::spice},
    {"chocolate", Special::spice},
    {"chile", Special::spice},
    {"nut", Special::spice},
    {"coconut", Special::spice},
    {"pumpkin", Special::spice},
    {"wood", Special::wood},
    {"oak", Special::wood},
    {"neutral-oak", Special::wood},
    {"barrel", Special::wood},
    {"smoked-malt", Special::smoke},
    {"smoked", Special::smoke},
    {"brett", Special::brettanomyces},
    {"brettanomyces", Special::brettanomyces},
    {"mixed culture", Special::brettanomyces},
    {"lacto", Special::souring},
    {"lactic culture", Special::souring},
    {"alternative-grain", Special::grain},
    {"rye", Special::grain},
    {"oats", Special::grain},
    {"spelt", Special::grain},
    {"buckwheat", Special::grain},
    {"sugar", Special::sugar},
    {"honey", Special::sugar},
    {"molasses", Special::sugar},
    {"brown-sugar", Special::sugar},
    {"maple-syrup", Special::sugar},
}};

constexpr std::array<std::string_view, 8> flavored_sugars{"honey",        "molasses",     "treacle",
                                                          "maple syrup",  "brown sugar",  "invert sugar dark",
                                                          "golden syrup", "sorghum syrup"};
constexpr std::array<std::string_view, 4> other_grains{"rye", "oats", "buckwheat", "spelt"};

bool speaks_of(const std::vector<std::string>& texts, Special special) {
    return std::any_of(texts.begin(), texts.end(), [special](const std::string& text) {
        return std::any_of(words.begin(), words.end(),
                           [&](const Word& each) { return each.special == special && each.word == text; });
    });
}

bool is(Special special, const Fermentable& fermentable) {
    switch (special) {
        case Special::fruit:
            return fermentable.kind == FermentableKind::fruit;
        case Special::smoke:
            return fermentable.gives.smoke > 0.0;
        case Special::grain:
            return std::any_of(other_grains.begin(), other_grains.end(),
                               [&](std::string_view group) { return contains(fermentable.groups, group); });
        case Special::sugar:
            return contains(flavored_sugars, fermentable.name);
        default:
            return false;
    }
}

bool is(Special special, const ExtraAddition& extra) {
    switch (extra.kind) {
        case ExtraKind::fruit:
            return special == Special::fruit;
        case ExtraKind::wood:
            return special == Special::wood;
        case ExtraKind::spice:
        case ExtraKind::tea:
        case ExtraKind::coffee:
        case ExtraKind::cocoa:
        case ExtraKind::nut:
        case ExtraKind::salt:
            return special == Special::spice;
        default:
            return false;
    }
}

bool is(Special special, const YeastClass& yeast) {
    return (special == Special::brettanomyces && yeast.brettanomyces) ||
           (special == Special::souring && yeast.lactic);
}

constexpr std::array<Special, 8> all_specials{Special::fruit, Special::spice,         Special::wood,
                                              Special::smoke, Special::brettanomyces, Special::souring,
                                              Special::grain, Special::sugar};

}  // namespace

std::vector<std::string_view> ingredients_that_are(Special special, const Recipe& recipe) {
    std::vector<std::string_view> names;
    for (const GristAddition& addition : recipe.grist) {
        if (is(special, addition.fermentable)) {
            names.push_back(addition.fermentable.name);
        }
    }
    for (const ExtraAddition& extra : recipe.extras) {
        if (is(special, extra)) {
            names.push_back(extra.name);
        }
    }
    for (const YeastAddition& addition : recipe.yeasts) {
        if (is(special, addition.yeast)) {
            names.push_back(addition.yeast.name);
        }
    }
    return names;
}

std::set<Special> specials_in(const Recipe& recipe) {
    std::set<Special> specials;
    for (const Special special : all_specials) {
        if (!ingredients_that_are(special, recipe).empty()) {
            specials.insert(special);
        }
    }
    return specials;
}

bool has_place_for(const Style& style, Special special) {
    const Custom& custom = style.custom;
    const auto asks_for = [&](Attribute attribute) {
        const auto& expectation = style.expected[attribute];
        return expectation && expectation->high >= 2.0;
    };
    const bool named = speaks_of(style.grist_expected, special) || speaks_of(style.grist_allowed, special) ||
                       speaks_of(custom.grist_typical, special) ||
                       speaks_of(custom.grist_possible, special) ||
                       speaks_of(custom.yeast_typical, special) || speaks_of(custom.yeast_possible, special);
    switch (special) {
        case Special::spice:
            return named || asks_for(Attribute::flavor_spice) || asks_for(Attribute::flavor_salt);
        case Special::smoke:
            return named || asks_for(Attribute::flavor_smoke);
        case Special::souring:
            return named || asks_for(Attribute::flavor_sour);
        default:
            return named;
    }
}

bool is_specialty(const Style& style) {
    const StyleRanges& ranges = style.ranges;
    const bool prints_numbers = ranges.original_gravity || ranges.final_gravity || ranges.alcohol;
    return !prints_numbers && (!style.grist_expected.empty() || style.fermentation == "mixed");
}

bool is_made_of_another(const Style& style) {
    return style.varies && !style.grist_expected.empty() &&
           (contains(style.may_declare, "base-style") || contains(style.must_declare, "base-style"));
}

bool has_what_it_asks_for(const Style& specialty, const std::set<Special>& specials) {
    const auto is_there = [&](const std::string& word) {
        if (word == "specialty-ingredient") {
            return specials.contains(Special::fruit) || specials.contains(Special::spice) ||
                   specials.contains(Special::wood);
        }
        return std::any_of(specials.begin(), specials.end(),
                           [&](Special special) { return speaks_of({word}, special); });
    };
    const bool is_wild = specials.contains(Special::brettanomyces) || specials.contains(Special::souring);
    return (specialty.fermentation != "mixed" || is_wild) &&
           std::all_of(specialty.grist_expected.begin(), specialty.grist_expected.end(), is_there);
}

}  // namespace entrywise

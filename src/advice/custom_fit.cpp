#include "advice/custom_fit.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <utility>

#include "base/text.hpp"
#include "style/customary.hpp"

namespace entrywise {

namespace {

/// What is possible in a style, but not usual, departs by so much (working values).
constexpr double possible_yeast = 0.4;
constexpr double possible_hops = 0.7;

/// Departures are told from so much of the whole on.
constexpr double told_from = 0.5;

constexpr std::size_t most_unusual = 2;

using Texts = std::vector<std::string>;
using Names = std::vector<std::string_view>;

void add_new(Names& names, std::string_view name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) {
        names.push_back(name);
    }
}

bool holds(const Texts& texts, std::string_view word) {
    return std::find(texts.begin(), texts.end(), word) != texts.end();
}

/// Where a style names nothing that is customary, anything is possible in it: what is not said must neither
/// speak for a style nor rule it out.
Customary custom_in(const Texts& typical, const Texts& possible, Customary named) {
    return typical.empty() && possible.empty() ? Customary::possible : named;
}

double departure(Customary custom, double of_possible) {
    return custom == Customary::usual ? 0.0 : (custom == Customary::possible ? of_possible : 1.0);
}

void hold_yeast(const Recipe& recipe, const Custom& custom, CustomFit& fit) {
    for (const YeastAddition& addition : recipe.yeasts) {
        const Customary kind = custom_in(custom.yeast_typical, custom.yeast_possible,
                                         custom_of_yeast(custom, addition.yeast.name));
        fit.yeast += departure(kind, possible_yeast) / static_cast<double>(recipe.yeasts.size());
        if (kind == Customary::seldom) {
            fit.seldom_yeasts.push_back(addition.yeast.name);
        }
    }
}

/// The part of each addition in the hop aroma, or in the mass of hops where none is smelled.
std::vector<double> shares_of_hops(const Recipe& recipe, const Beer& beer) {
    std::vector<double> shares(recipe.hops.size(), 0.0);
    double all = 0.0;
    for (const SourceShare& source : beer.drivers.hop_aroma.sources) {
        for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
            if (recipe.hops[index].position == source.position) {
                shares[index] = source.share;
                all += source.share;
            }
        }
    }
    for (std::size_t index = 0; all == 0.0 && index < shares.size(); ++index) {
        shares[index] = in(recipe.hops[index].mass, kilogram);
    }
    double sum = 0.0;
    for (const double share : shares) {
        sum += share;
    }
    for (double& share : shares) {
        share = sum > 0.0 ? share / sum : 0.0;
    }
    return shares;
}

void hold_hops(const Recipe& recipe, const std::vector<double>& shares, const Custom& custom,
               CustomFit& fit) {
    double foreign = 0.0;
    for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
        const Hop& hop = recipe.hops[index].hop;
        const Customary kind =
            custom_in(custom.hops_typical, custom.hops_possible, custom_of_hops(custom, hop.family));
        fit.hops += departure(kind, possible_hops) * shares[index];
        if (kind == Customary::seldom && shares[index] > 0.0) {
            foreign += shares[index];
            add_new(fit.seldom_hops, hop.name);
        }
    }
    if (foreign < told_from) {
        fit.seldom_hops.clear();
    }
}

/// How exactly a style's words name a fermentable: by its own name, by a group of its, or not.
int named_by(const Texts& words, const Fermentable& fermentable) {
    if (holds(words, fermentable.name)) {
        return 2;
    }
    return std::any_of(fermentable.groups.begin(), fermentable.groups.end(),
                       [&](const std::string& group) { return holds(words, group); })
               ? 1
               : 0;
}

bool is_unusual(const Fermentable& fermentable, const Custom& custom) {
    const int at_home =
        std::max({named_by(custom.grist_base, fermentable), named_by(custom.grist_typical, fermentable),
                  named_by(custom.grist_possible, fermentable)});
    return named_by(custom.grist_unusual, fermentable) > at_home;
}

bool is_in(const Recipe& recipe, std::string_view word) {
    return std::any_of(recipe.grist.begin(), recipe.grist.end(), [&](const GristAddition& addition) {
        const Fermentable& fermentable = addition.fermentable;
        return fermentable.name == word || holds(fermentable.groups, word);
    });
}

bool carries(const Fermentable& fermentable) {
    return fermentable.kind == FermentableKind::base || fermentable.kind == FermentableKind::malt_extract;
}

/// The share of the grist that is base malt of another kind than the style's. A style that names none is as
/// far from every grist.
double other_base(const Recipe& recipe, const Custom& custom) {
    constexpr double where_none_is_named = 0.5;  // working value
    if (custom.grist_base.empty()) {
        return where_none_is_named;
    }
    Mass other = 0.0 * kilogram;
    Mass all = 0.0 * kilogram;
    for (const GristAddition& addition : recipe.grist) {
        all += addition.mass;
        if (carries(addition.fermentable) && named_by(custom.grist_base, addition.fermentable) == 0) {
            other += addition.mass;
        }
    }
    return all > 0.0 * kilogram ? (other / all).value() : 0.0;
}

void hold_grist(const Recipe& recipe, const Custom& custom, CustomFit& fit) {
    for (const std::string& word : custom.grist_typical) {
        if (!is_in(recipe, word)) {
            fit.missing.push_back(word);
        }
    }
    for (const GristAddition& addition : recipe.grist) {
        if (is_unusual(addition.fermentable, custom)) {
            add_new(fit.unusual, addition.fermentable.name);
        }
    }
    const double usual = static_cast<double>(std::max<std::size_t>(custom.grist_typical.size(), 1));
    const double missing_share = static_cast<double>(fit.missing.size()) / usual;
    fit.grist += missing_share + static_cast<double>(std::min(fit.unusual.size(), most_unusual)) +
                 other_base(recipe, custom);
    if (missing_share <= told_from) {
        fit.missing.clear();
    }
}

}  // namespace

CustomOfRecipe::CustomOfRecipe(const Recipe& recipe, const Beer& beer)
    : recipe_(recipe), shares_of_hops_(shares_of_hops(recipe, beer)) {
    for (const Special special : {Special::fruit, Special::spice, Special::wood}) {
        Names names = ingredients_that_are(special, recipe);
        std::erase_if(names, [&](std::string_view name) { return is_in(recipe, name); });
        if (!names.empty()) {
            besides_.push_back({special, std::move(names)});
        }
    }
}

CustomFit CustomOfRecipe::fit_to(const Style& style, const Custom& custom) const {
    CustomFit fit;
    hold_yeast(recipe_, custom, fit);
    hold_hops(recipe_, shares_of_hops_, custom, fit);
    hold_grist(recipe_, custom, fit);
    for (const Besides& besides : besides_) {
        if (!has_place_for(style, besides.special)) {
            fit.grist += 1.0;
            fit.out_of_place.insert(fit.out_of_place.end(), besides.names.begin(), besides.names.end());
        }
    }
    return fit;
}

std::vector<std::string> departures_of(const CustomFit& fit) {
    std::vector<std::string> departures;
    const auto add = [&](std::string_view before, const Names& names, std::string_view last_joined_by,
                         std::string_view after) {
        if (!names.empty()) {
            departures.push_back(std::string(before) +
                                 listed(Texts(names.begin(), names.end()), last_joined_by) +
                                 std::string(after));
        }
    };
    for (const std::string_view yeast : fit.seldom_yeasts) {
        add("fermented with ", {yeast}, "and", " yeast, which this style seldom is");
    }
    add("hopped with ", fit.seldom_hops, "and", ", which this style seldom is");
    add("brewed with ", fit.unusual, "and", ", which this style seldom is");
    add("brewed without ", fit.missing, "or", ", which is usual in this style");
    add("brewed with ", fit.out_of_place, "and", ", for which this style has no place");
    return departures;
}

}  // namespace entrywise

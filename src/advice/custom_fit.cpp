#include "advice/custom_fit.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include "advice/special.hpp"
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

bool holds(const Texts& texts, std::string_view word) {
    return std::find(texts.begin(), texts.end(), word) != texts.end();
}

double departure(Customary custom, double of_possible) {
    return custom == Customary::usual ? 0.0 : (custom == Customary::possible ? of_possible : 1.0);
}

void hold_yeast(const Recipe& recipe, const Custom& custom, CustomFit& fit) {
    for (const YeastAddition& addition : recipe.yeasts) {
        const Customary kind = custom_of_yeast(custom, addition.yeast.name);
        fit.yeast += departure(kind, possible_yeast) / static_cast<double>(recipe.yeasts.size());
        if (kind == Customary::seldom) {
            fit.departures.push_back("fermented with " + addition.yeast.name +
                                     " yeast, which this style seldom is");
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

void hold_hops(const Recipe& recipe, const Beer& beer, const Custom& custom, CustomFit& fit) {
    const std::vector<double> shares = shares_of_hops(recipe, beer);
    double foreign = 0.0;
    Texts names;
    for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
        const Customary kind = custom_of_hops(custom, recipe.hops[index].hop.family);
        fit.hops += departure(kind, possible_hops) * shares[index];
        if (kind == Customary::seldom && shares[index] > 0.0) {
            foreign += shares[index];
            if (!holds(names, recipe.hops[index].hop.name)) {
                names.push_back(recipe.hops[index].hop.name);
            }
        }
    }
    if (foreign >= told_from) {
        fit.departures.push_back("hopped with " + listed(names, "and") + ", which this style seldom is");
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

bool is_in(const Recipe& recipe, const std::string& word) {
    return std::any_of(recipe.grist.begin(), recipe.grist.end(), [&](const GristAddition& addition) {
        return named_by({word}, addition.fermentable) > 0;
    });
}

bool carries(const Fermentable& fermentable) {
    return fermentable.kind == FermentableKind::base || fermentable.kind == FermentableKind::malt_extract;
}

/// The share of the grist that is base malt of another kind than the style's.
double other_base(const Recipe& recipe, const Custom& custom) {
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
    Texts missing;
    std::copy_if(custom.grist_typical.begin(), custom.grist_typical.end(), std::back_inserter(missing),
                 [&](const std::string& word) { return !is_in(recipe, word); });
    Texts unusual;
    for (const GristAddition& addition : recipe.grist) {
        if (is_unusual(addition.fermentable, custom) && !holds(unusual, addition.fermentable.name)) {
            unusual.push_back(addition.fermentable.name);
        }
    }
    const double usual = static_cast<double>(std::max<std::size_t>(custom.grist_typical.size(), 1));
    const double missing_share = static_cast<double>(missing.size()) / usual;
    fit.grist += missing_share + static_cast<double>(std::min(unusual.size(), most_unusual)) +
                 other_base(recipe, custom);
    if (!unusual.empty()) {
        fit.departures.push_back("brewed with " + listed(unusual, "and") + ", which this style seldom is");
    }
    if (missing_share > told_from) {
        fit.departures.push_back("brewed without " + listed(missing) + ", which is usual in this style");
    }
}

/// Fruit, spice and wood beside the grist, where the style has no place for them.
void hold_extras(const Recipe& recipe, const Style& style, CustomFit& fit) {
    for (const Special special : {Special::fruit, Special::spice, Special::wood}) {
        Texts names = ingredients_that_are(special, recipe);
        std::erase_if(names, [&](const std::string& name) { return is_in(recipe, name); });
        if (!names.empty() && !has_place_for(style, special)) {
            fit.grist += 1.0;
            fit.departures.push_back("brewed with " + listed(names, "and") +
                                     ", for which this style has no place");
        }
    }
}

}  // namespace

CustomFit custom_fit(const Recipe& recipe, const Beer& beer, const Style& style) {
    CustomFit fit;
    hold_yeast(recipe, style.custom, fit);
    hold_hops(recipe, beer, style.custom, fit);
    hold_grist(recipe, style.custom, fit);
    hold_extras(recipe, style, fit);
    return fit;
}

}  // namespace entrywise

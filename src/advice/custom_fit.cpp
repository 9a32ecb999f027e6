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
constexpr double of_possible_yeast = 0.4;
constexpr double of_possible_hops = 0.7;

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

double departure(Customary custom, double of_possible) {
    return custom == Customary::usual ? 0.0 : (custom == Customary::possible ? of_possible : 1.0);
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

bool is_in(const Recipe& recipe, std::string_view word) {
    return std::any_of(recipe.grist.begin(), recipe.grist.end(), [&](const GristAddition& addition) {
        const Fermentable& fermentable = addition.fermentable;
        return fermentable.name == word || contains(fermentable.groups, word);
    });
}

bool carries(const Fermentable& fermentable) {
    return fermentable.kind == FermentableKind::base || fermentable.kind == FermentableKind::malt_extract;
}

}  // namespace

CustomOfRecipe::CustomOfRecipe(const Recipe& recipe, const Beer& beer, const CustomWords& words)
    : recipe_(recipe),
      words_(words),
      shares_of_hops_(shares_of_hops(recipe, beer)),
      is_in_grist_(words.count(), false) {
    for (const YeastAddition& addition : recipe.yeasts) {
        yeasts_.push_back(words.number_of(addition.yeast.name));
    }
    for (const HopAddition& addition : recipe.hops) {
        hop_families_.push_back(words.number_of(addition.hop.family));
    }
    for (const GristAddition& addition : recipe.grist) {
        NumberedName& named = fermentables_.emplace_back();
        named.name = words.number_of(addition.fermentable.name);
        for (const std::string& group : addition.fermentable.groups) {
            named.groups.push_back(words.number_of(group));
        }
        std::vector<std::size_t> numbers = named.groups;
        numbers.push_back(named.name);
        for (const std::size_t number : numbers) {
            if (number != CustomWords::none) {
                is_in_grist_[number] = true;
            }
        }
    }
    for (const Special special : {Special::fruit, Special::spice, Special::wood}) {
        Names names = ingredients_that_are(special, recipe);
        std::erase_if(names, [&](std::string_view name) { return is_in(recipe, name); });
        if (!names.empty()) {
            besides_.push_back({special, std::move(names)});
        }
    }
}

CustomFit CustomOfRecipe::fit_to(const Style& style, const CustomOfStyle& custom) const {
    CustomFit fit;
    hold_yeast(custom, fit);
    hold_hops(custom, fit);
    hold_grist(custom, fit);
    for (const Besides& besides : besides_) {
        if (!has_place_for(style, besides.special)) {
            fit.grist += 1.0;
            fit.out_of_place.insert(fit.out_of_place.end(), besides.names.begin(), besides.names.end());
        }
    }
    return fit;
}

void CustomOfRecipe::hold_yeast(const CustomOfStyle& custom, CustomFit& fit) const {
    for (std::size_t index = 0; index < yeasts_.size(); ++index) {
        const std::string& name = recipe_.yeasts[index].yeast.name;
        const Customary kind = custom.of_yeast(name, yeasts_[index]);
        fit.yeast += departure(kind, of_possible_yeast) / static_cast<double>(yeasts_.size());
        if (kind == Customary::seldom) {
            fit.seldom_yeasts.push_back(name);
        }
    }
}

void CustomOfRecipe::hold_hops(const CustomOfStyle& custom, CustomFit& fit) const {
    double foreign = 0.0;
    for (std::size_t index = 0; index < hop_families_.size(); ++index) {
        const Customary kind = custom.of_hops(hop_families_[index]);
        fit.hops += departure(kind, of_possible_hops) * shares_of_hops_[index];
        if (kind == Customary::seldom && shares_of_hops_[index] > 0.0) {
            foreign += shares_of_hops_[index];
            add_new(fit.seldom_hops, recipe_.hops[index].hop.name);
        }
    }
    if (foreign < told_from) {
        fit.seldom_hops.clear();
    }
}

/// The share of the grist that is base malt of another kind than the style's. A style that names none is as
/// far from every grist.
double CustomOfRecipe::other_base(const CustomOfStyle& custom) const {
    constexpr double where_none_is_named = 0.5;  // working value
    if (!custom.names_a_base()) {
        return where_none_is_named;
    }
    Mass other = 0.0 * kilogram;
    Mass all = 0.0 * kilogram;
    for (std::size_t index = 0; index < fermentables_.size(); ++index) {
        const GristAddition& addition = recipe_.grist[index];
        all += addition.mass;
        if (carries(addition.fermentable) && !custom.is_base(fermentables_[index])) {
            other += addition.mass;
        }
    }
    return all > 0.0 * kilogram ? (other / all).value() : 0.0;
}

void CustomOfRecipe::hold_grist(const CustomOfStyle& custom, CustomFit& fit) const {
    for (const std::size_t number : custom.usual_grist()) {
        if (!is_in_grist_[number]) {
            fit.missing.push_back(words_.word(number));
        }
    }
    for (std::size_t index = 0; index < fermentables_.size(); ++index) {
        if (custom.is_unusual(fermentables_[index])) {
            add_new(fit.unusual, recipe_.grist[index].fermentable.name);
        }
    }
    const double usual = static_cast<double>(std::max<std::size_t>(custom.usual_grist().size(), 1));
    const double missing_share = static_cast<double>(fit.missing.size()) / usual;
    fit.grist +=
        missing_share + static_cast<double>(std::min(fit.unusual.size(), most_unusual)) + other_base(custom);
    if (missing_share <= told_from) {
        fit.missing.clear();
    }
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

#include "advice/caution.hpp"

#include <algorithm>
#include <set>

#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/brew.hpp"
#include "brewing/carbonation.hpp"
#include "brewing/deviates.hpp"
#include "brewing/hop_creep.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

/// Common beer bottles are made for about 3 volumes with some to spare; none of them for more than 4 (common
/// practice; the maker's own limit decides).
constexpr Carbonation usual_bottle = 3.0 * volume_of_co2;
constexpr Carbonation most_for_a_beer_bottle = 4.0 * volume_of_co2;
constexpr AlcoholByVolume strong_from = 9.0 * percent_by_volume;
constexpr SpecificGravity unfinished_by = 0.003 * specific_gravity;

bool may_be_bottled(const Recipe& recipe) {
    return recipe.conditioning.bottled.value_or(true);
}

void add_pressure(const Recipe& recipe, const Beer& beer, std::vector<Caution>& cautions) {
    if (!may_be_bottled(recipe)) {
        return;
    }
    const Carbonation carbonation = beer.carbonation.interval().high;
    const std::string volumes = fixed(in(carbonation, volume_of_co2), carbonation_decimals);
    if (carbonation > most_for_a_beer_bottle) {
        cautions.push_back(
            {"pressure", "May reach " + volumes +
                             " volumes: more than any common beer bottle bears. Use a keg, or bottles "
                             "that their maker rates for it."});
    } else if (carbonation > usual_bottle) {
        cautions.push_back(
            {"pressure", "May reach " + volumes +
                             " volumes: only in new, thick bottles that their maker rates for it; "
                             "handle them cold and with eyes covered."});
    }
}

void add_late_fermentation(const Recipe& recipe, std::vector<Caution>& cautions) {
    if (!may_be_bottled(recipe)) {
        return;
    }
    const auto ferments_on = [](const YeastAddition& addition) {
        return addition.yeast.diastatic || addition.yeast.brettanomyces;
    };
    if (std::any_of(recipe.yeasts.begin(), recipe.yeasts.end(), ferments_on)) {
        cautions.push_back(
            {"pressure",
             "Diastatic yeast and Brettanomyces ferment on for weeks and can burst bottles: bottle only "
             "when the gravity has stood still for a month, and prime for what is left to ferment."});
    }
}

/// The gas that hop creep may add in a bottle, at the upper end of what hops do.
Carbonation gas_of_hop_creep(const Recipe& recipe, const Beer& beer) {
    const Share to_come = hop_creep_to_come(recipe.hops, recipe.volume.middle,
                                            recipe.fermentation_temperature.value_or(celsius(20.0)));
    const double upper_end = in(hop_creep_factor.middle + hop_creep_factor.half_width, whole);
    const double grams_of_extract_in_a_liter =
        10.0 * in(beer.real_extract.median(), plato) * in(beer.final_gravity.median(), specific_gravity);
    return carbonation_of(upper_end * in(to_come, whole) * in(carbon_dioxide_yield_of_extract(), whole) *
                          grams_of_extract_in_a_liter * gram_per_liter);
}

void add_hop_creep(const Recipe& recipe, const Beer& beer, std::vector<Caution>& cautions) {
    constexpr Carbonation bearable = 1.0 * volume_of_co2;
    const bool no_yeast = recipe.conditioning.filtered.value_or(false);
    if (!may_be_bottled(recipe) || no_yeast || recipe.measured.final_gravity) {
        return;
    }
    const Carbonation gas = gas_of_hop_creep(recipe, beer);
    if (gas > bearable) {
        cautions.push_back(
            {"pressure", "Dry hops go on setting sugar free, which in a bottle may add up to " +
                             fixed(in(gas, volume_of_co2), carbonation_decimals) +
                             " volumes: keep the beer warm on its yeast until the gravity has "
                             "stood still for days, then bottle."});
    }
}

void add_allergens(const Recipe& recipe, std::vector<Caution>& cautions) {
    const std::vector<std::string> names = allergens_of(recipe);
    if (!names.empty()) {
        cautions.push_back({"allergen", "Contains " + listed(names, "and") + "."});
    }
}

void add_alcohol(const Beer& beer, std::vector<Caution>& cautions) {
    const AlcoholByVolume alcohol = beer.alcohol.median();
    if (alcohol >= strong_from) {
        cautions.push_back(
            {"alcohol", "About " + fixed(in(alcohol, percent_by_volume), alcohol_decimals) +
                            " % alcohol, predicted and not measured: no basis for labels, tax, serving "
                            "or driving."});
    }
}

void add_botanicals(const Recipe& recipe, std::vector<Caution>& cautions) {
    std::vector<std::string> names;
    for (const ExtraAddition& extra : recipe.extras) {
        const bool botanical =
            extra.kind == ExtraKind::tea || extra.kind == ExtraKind::wood || extra.kind == ExtraKind::other;
        if (botanical) {
            names.push_back(extra.name);
        }
    }
    if (!names.empty()) {
        cautions.push_back(
            {"botanical", "Make sure that " + listed(names, "and") +
                              " is safe to eat in this amount: not every plant, wood or tea is."});
    }
}

/// The final gravity that the recipe alone would lead one to expect.
SpecificGravity expected_final_gravity(Recipe recipe) {
    recipe.measured.final_gravity.reset();
    Deviates middle(1);
    return brew(recipe, middle).final_gravity.median();
}

void add_unfinished_fermentation(const Recipe& recipe, std::vector<Caution>& cautions) {
    if (!recipe.measured.final_gravity || !may_be_bottled(recipe)) {
        return;
    }
    const SpecificGravity measured = recipe.measured.final_gravity->middle;
    const SpecificGravity expected = expected_final_gravity(recipe);
    if (measured - expected > unfinished_by) {
        cautions.push_back(
            {"pressure", "The measured final gravity stands " +
                             fixed(in(measured - expected, specific_gravity), 3) +
                             " above the expected one: make sure that fermentation has ended before "
                             "bottling, as what is left can burst bottles."});
    }
}

}  // namespace

void add_new(const std::vector<Caution>& more, std::vector<Caution>& cautions) {
    for (const Caution& caution : more) {
        if (std::find(cautions.begin(), cautions.end(), caution) == cautions.end()) {
            cautions.push_back(caution);
        }
    }
}

std::vector<std::string> allergens_of(const Recipe& recipe) {
    std::set<std::string> allergens;
    for (const GristAddition& addition : recipe.grist) {
        allergens.insert(addition.fermentable.allergens.begin(), addition.fermentable.allergens.end());
    }
    for (const ExtraAddition& extra : recipe.extras) {
        const std::string name = lowered(extra.name);
        const bool fish =
            name.find("isinglass") != std::string::npos || name.find("fish") != std::string::npos;
        if (extra.kind == ExtraKind::nut) {
            allergens.insert(extra.name);
        } else if (extra.kind == ExtraKind::fining && fish) {
            allergens.insert("fish");
        }
    }
    return {allergens.begin(), allergens.end()};
}

std::vector<Caution> cautions_of(const Recipe& recipe, const Beer& beer) {
    std::vector<Caution> cautions;
    add_pressure(recipe, beer, cautions);
    add_late_fermentation(recipe, cautions);
    add_hop_creep(recipe, beer, cautions);
    add_unfinished_fermentation(recipe, cautions);
    add_alcohol(beer, cautions);
    add_botanicals(recipe, cautions);
    add_allergens(recipe, cautions);
    return cautions;
}

}  // namespace entrywise

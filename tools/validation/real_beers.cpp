#include "tools/validation/real_beers.hpp"

#include "brewing/balling.hpp"
#include "brewing/brew.hpp"
#include "quantity/plato.hpp"

namespace entrywise {

namespace {

template <class Value>
void add(StatedNumber& number, const RealRecipe& entry, std::optional<double> stated,
         const Estimate<Value>& worked_out, Value unit) {
    if (stated) {
        const auto interval = worked_out.interval();
        number.values.push_back({entry.id, *stated, in(interval.median, unit),
                                 StatedInterval{in(interval.low, unit), in(interval.high, unit)}});
        number.recipes.push_back(entry);
    }
}

std::optional<double> stated_attenuation(const RealRecipe& entry) {
    if (!entry.original_gravity || !entry.final_gravity) {
        return std::nullopt;
    }
    const Attenuation attenuation =
        apparent_attenuation(extract_of(*entry.original_gravity * specific_gravity),
                             extract_of(*entry.final_gravity * specific_gravity));
    return in(attenuation, 0.01 * fully_attenuated);
}

}  // namespace

std::vector<Comparison> StatedNumber::only(bool (*counts)(const RealRecipe&)) const {
    std::vector<Comparison> kept;
    for (std::size_t index = 0; index < values.size(); ++index) {
        if (counts(recipes[index])) {
            kept.push_back(values[index]);
        }
    }
    return kept;
}

bool is_strong(const RealRecipe& recipe) {
    return recipe.original_gravity.value_or(1.0) >= 1.080;
}

RealBeers real_beers(const std::string& folder, const Library& library) {
    StatedNumber original{"original gravity", "SG", 4, {}, {}};
    StatedNumber final{"final gravity", "SG", 4, {}, {}};
    StatedNumber attenuation{"apparent attenuation", "%", 1, {}, {}};
    StatedNumber alcohol{"alcohol by volume", "%", 2, {}, {}};
    RealBeers beers;
    for (const RealRecipe& entry : real_recipes_in(folder)) {
        const auto recipe = recipe_of(entry, folder, library);
        if (!recipe) {
            continue;
        }
        Deviates deviates(usual_draws);
        const Beer beer = brew(*recipe, deviates);
        ++beers.count;
        add(original, entry, entry.original_gravity, beer.original_gravity.total, specific_gravity);
        add(final, entry, entry.final_gravity, beer.final_gravity, specific_gravity);
        add(attenuation, entry, stated_attenuation(entry), beer.apparent_attenuation,
            0.01 * fully_attenuated);
        add(alcohol, entry, entry.alcohol, beer.alcohol, percent_by_volume);
    }
    beers.numbers = {original, final, attenuation, alcohol};
    return beers;
}

}  // namespace entrywise

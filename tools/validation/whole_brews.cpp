#include "tools/validation/whole_brews.hpp"

#include "brewing/brew.hpp"
#include "tests/support/measured_brews.hpp"
#include "tests/support/recipes.hpp"

namespace entrywise {

namespace {

using published::MeasuredBrew;

/// Volume and alpha acids are those that were measured. How long the wort stayed hot, a recipe does not say.
Recipe recipe_of(const MeasuredBrew& brew) {
    Hop hop = testing::hop("the hop", brew.alpha_percent, 1.0);
    hop.alpha.half_width = 0.0 * percent;
    HopAddition addition = testing::was_boiled(brew)
                               ? testing::boiled(hop, brew.grams, brew.minutes)
                               : testing::stood(hop, brew.grams, brew.minutes, brew.celsius);
    addition.form = HopForm::whole;
    Recipe recipe = testing::hopped({addition});
    recipe.measured.original_gravity->middle = brew.original_gravity * specific_gravity;
    // The kettle keeps a little back, so that the volume of the wort is that of the kettle.
    constexpr double into_fermenter = 0.96;
    recipe.volume.middle = into_fermenter * brew.liters * liter;
    return recipe;
}

template <class Formula>
BitternessFormula by(const std::string& name, Formula formula) {
    BitternessFormula result{name, {}};
    for (const MeasuredBrew& brew : published::measured_brews) {
        result.values.push_back({testing::in_words(brew), brew.ibu, formula(brew), {}});
    }
    return result;
}

}  // namespace

Quantity whole_brews() {
    Quantity quantity{"Bitterness of single boils and steeps, from a recipe",
                      "IBU",
                      1,
                      Evidence::measured_seen,
                      published::boils_and_steeps,
                      {}};
    for (const MeasuredBrew& brew : published::measured_brews) {
        const auto interval = testing::brew_with(recipe_of(brew), usual_draws).bitterness.total.interval();
        quantity.values.push_back({testing::in_words(brew), brew.ibu, in(interval.median, ibu),
                                   StatedInterval{in(interval.low, ibu), in(interval.high, ibu)}});
    }
    return quantity;
}

std::vector<BitternessFormula> bitterness_by_formula() {
    return {by("ours, the chill known", testing::predicted_ibu),
            {"ours, from a recipe", whole_brews().values},
            by("Tinseth", testing::tinseth_ibu),
            by("Rager", testing::rager_ibu),
            by("Garetz", testing::garetz_ibu)};
}

}  // namespace entrywise

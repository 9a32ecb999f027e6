#include "advice/kitchen.hpp"

#include <utility>

#include "advice/measured_before.hpp"
#include "brewing/blend.hpp"
#include "brewing/brew.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

namespace {

/// The ingredients of both beers, so that the kind of what is smelled can be traced.
Recipe poured_together(Recipe recipe, const Recipe& other) {
    const auto add = [](auto& additions, auto more) {
        for (auto& addition : more) {
            addition.position = in_second_beer(addition.position);
            additions.push_back(addition);
        }
    };
    add(recipe.grist, other.grist);
    add(recipe.hops, other.hops);
    add(recipe.yeasts, other.yeasts);
    return recipe;
}

}  // namespace

Kitchen::Kitchen(const Recipe& recipe, const MendingMeans& means, const Handbook& handbook, Stage stage,
                 std::size_t draws)
    : recipe_(recipe),
      means_(means),
      handbook_(handbook),
      stage_(stage),
      deviates_(draws),
      other_beers_(means.other_beers.size()) {}

Tasting Kitchen::taste_of(Attempt attempt) {
    settle_measurements(attempt.recipe);
    deviates_.forget_inputs();
    Tasting tasting;
    tasting.beer = brew(attempt.recipe, deviates_);
    if (attempt.blend) {
        const std::size_t other = attempt.blend->beer;
        tasting.beer = blended(tasting.beer, other_beer(other), attempt.blend->share);
        attempt.recipe = poured_together(std::move(attempt.recipe), means_.other_beers[other]);
    }
    if (attempt.water > Share()) {
        tasting.beer = diluted(tasting.beer, attempt.water);
    }
    tasting.profile = sense(tasting.beer, handbook_.perception, deviates_);
    tasting.recipe = std::move(attempt.recipe);
    return tasting;
}

void Kitchen::settle_measurements(Recipe& changed) const {
    if (stage_ == Stage::brewed) {
        move_measured_bitterness(recipe_, changed);
    } else {
        drop_untrue_measurements(recipe_, changed);
    }
}

const Beer& Kitchen::other_beer(std::size_t index) {
    std::optional<Beer>& beer = other_beers_[index];
    if (!beer) {
        Deviates deviates(deviates_.draws());
        beer = brew(means_.other_beers[index], deviates);
    }
    return *beer;
}

}  // namespace entrywise

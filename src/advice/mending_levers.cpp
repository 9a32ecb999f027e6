#include "advice/mending_levers.hpp"

#include <iterator>

namespace entrywise {

namespace {

void append(std::vector<MendingLever>& levers, std::vector<MendingLever> more) {
    levers.insert(levers.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

std::vector<std::string> names_of(const std::vector<Recipe>& beers) {
    std::vector<std::string> names;
    for (const Recipe& beer : beers) {
        names.push_back(beer.name);
    }
    return names;
}

}  // namespace

std::vector<MendingLever> levers_of(const Recipe& recipe, const Beer& beer, const Style& style,
                                    const MendingMeans& means, Stage stage) {
    std::vector<MendingLever> levers;
    if (stage == Stage::brewed) {
        append(levers, packaging_levers(recipe, beer, style));
        append(levers, dry_hop_levers(recipe, style, means.pantry));
        append(levers, finished_beer_levers(names_of(means.other_beers)));
        return levers;
    }
    append(levers, strength_levers(recipe));
    append(levers, grist_levers(recipe, style));
    append(levers, hop_levers(recipe, style));
    append(levers, mash_levers(recipe));
    append(levers, fermentation_levers(recipe));
    append(levers, packaging_levers(recipe, beer, style));
    append(levers, extra_levers(recipe, style));
    append(levers, new_malt_levers(recipe, style, means.pantry));
    append(levers, new_hop_levers(recipe, style, means.pantry));
    append(levers, dry_hop_levers(recipe, style, means.pantry));
    append(levers, yeast_levers(recipe, style, means.pantry));
    return levers;
}

}  // namespace entrywise

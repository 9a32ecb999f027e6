#include "recipe/ingredients.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace entrywise {

namespace {

template <class Ingredient>
const Ingredient* find_in(const std::vector<Ingredient>& ingredients, const std::string& name) {
    const std::string wanted = lowered(trimmed(name));
    const auto found =
        std::find_if(ingredients.begin(), ingredients.end(), [&](const Ingredient& ingredient) {
            const auto is_wanted = [&](const std::string& known) { return lowered(known) == wanted; };
            return is_wanted(ingredient.name) ||
                   std::any_of(ingredient.aliases.begin(), ingredient.aliases.end(), is_wanted);
        });
    return found == ingredients.end() ? nullptr : &*found;
}

}  // namespace

bool needs_a_mash(FermentableKind kind) {
    switch (kind) {
        case FermentableKind::base:
        case FermentableKind::toasted:
        case FermentableKind::crystal:
        case FermentableKind::roasted:
        case FermentableKind::adjunct:
            return true;
        case FermentableKind::sugar:
        case FermentableKind::malt_extract:
        case FermentableKind::fruit:
            return false;
    }
    return true;
}

const Fermentable* find_fermentable(const IngredientTables& tables, const std::string& name) {
    return find_in(tables.fermentables, name);
}

const Hop* find_hop(const IngredientTables& tables, const std::string& name) {
    return find_in(tables.hops, name);
}

const YeastClass* find_yeast(const IngredientTables& tables, const std::string& name) {
    return find_in(tables.yeasts, name);
}

}  // namespace entrywise

#include "cli/entry_recipe.hpp"

#include <utility>

#include "cli/recipe_input.hpp"
#include "cli/style_entered.hpp"
#include "interchange/exchange.hpp"
#include "reading/recipe_reader.hpp"

namespace entrywise {

namespace {

Outcome<Recipe> recipe_in(const ClubEntry& entry, const Library& library) {
    if (!entry.recipe) {
        Outcome<RecipeInput> input = recipe_input(entry.recipe_file, library, entry.pick);
        return input ? Outcome<Recipe>(std::move(input.value->recipe)) : Outcome<Recipe>(input.faults);
    }
    if (value_of(*entry.recipe, "beerjson") == nullptr) {
        return read_recipe(*entry.recipe, library.ingredients(), entry.place.file);
    }
    Outcome<ExchangedRecipe> read =
        read_beerjson(*entry.recipe, entry.place.file, entry.pick, library.ingredients());
    return read ? Outcome<Recipe>(std::move(read.value->recipe)) : Outcome<Recipe>(read.faults);
}

/// A style that the form names, with faults placed in the form.
Outcome<StyleName> style_on_the_form(const std::string& code, const ClubEntry& entry,
                                     const std::string& guide, const Library& library) {
    const bool names_its_guide = code.find('/') != std::string::npos;
    const std::string name = guide.empty() || names_its_guide ? code : guide + '/' + code;
    Outcome<Style> style = style_called(library, name);
    if (!style) {
        for (Fault& fault : style.faults) {
            fault.place = entry.category_place;
        }
        return style.faults;
    }
    return StyleName{style->guide, style->code};
}

Outcome<Recipe> as_declared(Recipe recipe, const ClubEntry& entry, const std::string& guide,
                            const Library& library) {
    if (!entry.category.empty()) {
        const Outcome<StyleName> style = style_on_the_form(entry.category, entry, guide, library);
        if (!style) {
            return style.faults;
        }
        // What the recipe says for another style says nothing of this one.
        if (recipe.style != *style) {
            recipe.base_style.reset();
        }
        recipe.style = *style;
    }
    if (!entry.base.empty()) {
        const Outcome<StyleName> base = style_on_the_form(entry.base, entry, guide, library);
        if (!base) {
            return base.faults;
        }
        recipe.base_style = *base;
    }
    for (const auto& [key, said] : entry.declares) {
        recipe.declares[key] = said;
    }
    return recipe;
}

}  // namespace

Outcome<EntryRead> entry_read(const ClubEntry& entry, const std::string& guide, const Knowledge& knowledge) {
    if (!entry.faults.empty()) {
        return entry.faults;
    }
    Outcome<Recipe> recipe = recipe_in(entry, knowledge.library);
    if (recipe) {
        recipe = as_declared(*std::move(recipe.value), entry, guide, knowledge.library);
    }
    if (!recipe) {
        return recipe.faults;
    }
    EntryRead read{*std::move(recipe.value), {}, {}, {}};
    if (!read.recipe.style) {
        return read;
    }
    Outcome<EnteredStyle> entered = style_entered(read.recipe, {}, knowledge);
    if (!entered) {
        return entered.faults;
    }
    read.style = std::move(entered.value->style);
    read.base_style = std::move(entered.value->base_style);
    return read;
}

}  // namespace entrywise

#include "cli/style_entered.hpp"

#include <utility>
#include <vector>

namespace entrywise {

namespace {

/// The style that the call names, or else the one that the recipe declares.
Outcome<Style> style_named_or_declared(const Recipe& recipe, const Call& call, const Library& library) {
    if (!call.style.empty()) {
        return style_called(library, call.style);
    }
    Outcome<Style> style = declared_style(recipe, library);
    if (!recipe.style) {
        style.faults.front().remedy = "Declare it in the recipe, or name one with --style 21A.";
    }
    return style;
}

}  // namespace

Outcome<EnteredStyle> style_entered(const Recipe& recipe, const Call& call, const Knowledge& knowledge) {
    Outcome<Style> style = style_named_or_declared(recipe, call, knowledge.library);
    if (style) {
        return entered_style(*std::move(style.value), recipe, knowledge);
    }
    const std::vector<Fault> of_base = declared_base_style(recipe, knowledge).faults;
    style.faults.insert(style.faults.end(), of_base.begin(), of_base.end());
    return style.faults;
}

}  // namespace entrywise

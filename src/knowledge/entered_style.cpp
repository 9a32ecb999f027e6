#include "knowledge/entered_style.hpp"

#include <utility>

#include "knowledge/declared_variant.hpp"

namespace entrywise {

namespace {

/// The base style that the recipe declares, if it does, or the variant of it.
Outcome<std::optional<Style>> base_style_for(const Recipe& recipe, const Knowledge& knowledge) {
    if (!recipe.base_style) {
        return std::optional<Style>();
    }
    Outcome<Style> style = knowledge.library.style(*recipe.base_style);
    if (style) {
        Outcome<Style> variant = declared_variant(*std::move(style.value), recipe, knowledge.library,
                                                  knowledge.handbook.phrases.declarations);
        return variant ? Outcome<std::optional<Style>>(*std::move(variant.value)) : variant.faults;
    }
    for (Fault& fault : style.faults) {
        fault.place.file = recipe.file;
        fault.found += " (base_style)";
    }
    return style.faults;
}

}  // namespace

Outcome<Style> declared_style(const Recipe& recipe, const Library& library) {
    if (!recipe.style) {
        return Fault{.place = {recipe.file, {}},
                     .found = "no style",
                     .expected = "a line such as `style: bjcp-2021/21A`",
                     .nearest = {},
                     .remedy = {}};
    }
    Outcome<Style> style = library.style(*recipe.style);
    for (Fault& fault : style.faults) {
        if (fault.place.file.empty()) {
            fault.place.file = recipe.file;
        }
    }
    return style;
}

Outcome<EnteredStyle> entered_style(Style style, const Recipe& recipe, const Knowledge& knowledge) {
    Outcome<Style> judged = declared_variant(std::move(style), recipe, knowledge.library,
                                             knowledge.handbook.phrases.declarations);
    if (!judged) {
        return judged.faults;
    }
    Outcome<std::optional<Style>> base_style = base_style_for(recipe, knowledge);
    if (!base_style) {
        return base_style.faults;
    }
    return EnteredStyle{*std::move(judged.value), *std::move(base_style.value)};
}

}  // namespace entrywise

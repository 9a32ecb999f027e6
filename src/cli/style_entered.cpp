#include "cli/style_entered.hpp"

#include <utility>

#include "cli/declared_variant.hpp"

namespace entrywise {

namespace {

/// The style that the call names, or else the one that the recipe declares.
Outcome<Style> style_named_or_declared(const Recipe& recipe, const Call& call, const Library& library) {
    if (!call.style.empty()) {
        return style_called(library, call.style);
    }
    if (!recipe.style) {
        return Fault{.place = {recipe.file, {}},
                     .found = "no style",
                     .expected = "a line such as `style: bjcp-2021/21A`",
                     .nearest = {},
                     .remedy = "Declare it in the recipe, or name one with --style 21A."};
    }
    Outcome<Style> style = library.style(*recipe.style);
    for (Fault& fault : style.faults) {
        if (fault.place.file.empty()) {
            fault.place.file = recipe.file;
        }
    }
    return style;
}

/// That style, or the variant of it that the recipe declares.
Outcome<Style> style_for(const Recipe& recipe, const Call& call, const Knowledge& knowledge) {
    Outcome<Style> style = style_named_or_declared(recipe, call, knowledge.library);
    return style ? declared_variant(*std::move(style.value), recipe, knowledge.library,
                                    knowledge.handbook.phrases.declarations)
                 : style;
}

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

Outcome<EnteredStyle> style_entered(const Recipe& recipe, const Call& call, const Knowledge& knowledge) {
    Outcome<Style> style = style_for(recipe, call, knowledge);
    if (!style) {
        return style.faults;
    }
    Outcome<std::optional<Style>> base_style = base_style_for(recipe, knowledge);
    if (!base_style) {
        return base_style.faults;
    }
    return EnteredStyle{*std::move(style.value), *std::move(base_style.value)};
}

}  // namespace entrywise

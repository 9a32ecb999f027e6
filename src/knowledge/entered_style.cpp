#include "knowledge/entered_style.hpp"

#include <utility>

#include "knowledge/declared_variant.hpp"
#include "reading/style_name.hpp"

namespace entrywise {

namespace {

/// The style of a name, which stands at a place.
Outcome<Style> style_named(const StyleName& name, const Place& place, const Library& library) {
    Outcome<Style> style = library.style(name);
    for (Fault& fault : style.faults) {
        if (fault.place.file.empty()) {
            fault.place = place;
        }
    }
    return style;
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
    return style_named(*recipe.style, {recipe.file, recipe.style_position}, library);
}

Outcome<std::optional<Style>> declared_base_style(const Recipe& recipe, const Knowledge& knowledge) {
    if (!recipe.base_style) {
        return std::optional<Style>();
    }
    Outcome<Style> style =
        style_named(*recipe.base_style, {recipe.file, recipe.base_style_position}, knowledge.library);
    if (!style) {
        return style.faults;
    }
    Outcome<Style> variant = declared_variant(*std::move(style.value), recipe, knowledge.library,
                                              knowledge.handbook.phrases.declarations);
    return variant ? Outcome<std::optional<Style>>(*std::move(variant.value)) : variant.faults;
}

std::vector<Fault> unknown_styles_in(const Node& recipe, const std::string& file, const Library& library) {
    std::vector<Fault> faults;
    for (const char* key : {"style", "base_style"}) {
        const Node* node = value_of(recipe, key);
        const auto name = node == nullptr ? std::nullopt : style_name_from(node->text);
        if (name) {
            const Outcome<Style> style = style_named(*name, {file, node->position}, library);
            faults.insert(faults.end(), style.faults.begin(), style.faults.end());
        }
    }
    return faults;
}

Outcome<EnteredStyle> entered_style(Style style, const Recipe& recipe, const Knowledge& knowledge) {
    Outcome<Style> judged = declared_variant(std::move(style), recipe, knowledge.library,
                                             knowledge.handbook.phrases.declarations);
    if (!judged) {
        return judged.faults;
    }
    Outcome<std::optional<Style>> base_style = declared_base_style(recipe, knowledge);
    if (!base_style) {
        return base_style.faults;
    }
    return EnteredStyle{*std::move(judged.value), *std::move(base_style.value)};
}

}  // namespace entrywise

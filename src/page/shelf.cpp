#include "page/shelf.hpp"

#include <optional>
#include <set>
#include <string>
#include <string_view>

#include "interchange/recipe_words.hpp"
#include "quantity/text.hpp"
#include "reading/embedded.hpp"
#include "report/sections.hpp"
#include "style/attribute.hpp"

namespace entrywise {

namespace {

Json json_of(const Fermentable& fermentable) {
    return {{"name", fermentable.name},
            {"key", std::string(name_key_of(fermentable.kind))},
            {"aliases", fermentable.aliases},
            {"color", to_text(fermentable.color.middle, "EBC")},
            {"extract", to_text(fermentable.extract.middle)}};
}

Json json_of(const Hop& hop) {
    return {{"name", hop.name}, {"aliases", hop.aliases}, {"alpha", to_text(hop.alpha.middle)}};
}

Json json_of(const YeastClass& yeast) {
    return {{"name", yeast.name},
            {"aliases", yeast.aliases},
            {"attenuation", to_text(yeast.attenuation.middle)},
            {"low", to_text(yeast.temperature.low, "C")},
            {"high", to_text(yeast.temperature.high, "C")}};
}

/// Every ingredient of a kind once, whatever it also goes by, in the order of their names.
template <class Find>
Json all_of_a_kind(std::string_view folder, Find find) {
    Json list = Json::array();
    std::set<std::string> seen;
    for (const EmbeddedDocument& document : embedded_documents()) {
        if (!document.path.starts_with(folder)) {
            continue;
        }
        const auto ingredient = find(std::string(document.path.substr(folder.size())));
        if (ingredient && seen.insert(ingredient->name).second) {
            list.push_back(json_of(*ingredient));
        }
    }
    return list;
}

Json styles_json(const std::vector<Style>& styles) {
    Json list = Json::array();
    for (const Style& style : styles) {
        list.push_back({{"guide", style.guide}, {"code", style.code}, {"name", style.name}});
    }
    return list;
}

Json sections_json(const ScoreSheet& score_sheet) {
    Json list = Json::array();
    for (const Section section : sheet_sections) {
        list.push_back({{"section", std::string(word_of(section))},
                        {"title", std::string(title_of(section))},
                        {"points", score_sheet.points[section]}});
    }
    return list;
}

}  // namespace

Json shelf_json(const Knowledge& knowledge, const std::vector<Style>& styles) {
    const KnownIngredients& known = knowledge.library.ingredients();
    Json shelf;
    shelf["fermentables"] = all_of_a_kind("ingredients/fermentable/",
                                          [&](const std::string& name) { return known.fermentable(name); });
    shelf["hops"] =
        all_of_a_kind("ingredients/hop/", [&](const std::string& name) { return known.hop(name); });
    shelf["yeasts"] =
        all_of_a_kind("ingredients/yeast/", [&](const std::string& name) { return known.yeast(name); });
    shelf["styles"] = styles_json(styles);
    shelf["sections"] = sections_json(knowledge.handbook.score_sheet);
    return shelf;
}

}  // namespace entrywise

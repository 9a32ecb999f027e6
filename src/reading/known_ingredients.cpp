#include "reading/known_ingredients.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <vector>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/ingredient_reader.hpp"
#include "reading/packed_document.hpp"

namespace entrywise {

namespace {

/// How one kind of ingredient is found: where its entries are built in, how one is read, how an outside one
/// is looked up.
template <class Ingredient>
struct Kind {
    std::string_view folder;
    Outcome<Ingredient> (*read)(const Node& entry, const std::string& file);
    std::vector<Ingredient> IngredientTables::*table;
    const Ingredient* (*find)(const IngredientTables& tables, const std::string& name);
};

constexpr Kind<Fermentable> fermentables{"ingredients/fermentable/", read_fermentable,
                                         &IngredientTables::fermentables, find_fermentable};
constexpr Kind<Hop> hops{"ingredients/hop/", read_hop, &IngredientTables::hops, find_hop};
constexpr Kind<YeastClass> yeasts{"ingredients/yeast/", read_yeast, &IngredientTables::yeasts, find_yeast};

template <class Ingredient>
std::optional<Ingredient> built_in(const Kind<Ingredient>& kind, std::span<const EmbeddedDocument> embedded,
                                   const std::string& name) {
    const std::string path = fmt::format("{}{}", kind.folder, lowered(trimmed(name)));
    const EmbeddedDocument* document = find_document(embedded, path);
    const auto entry = document == nullptr ? std::nullopt : unpacked(document->bytes);
    return entry ? kind.read(*entry, path).value : std::nullopt;
}

template <class Ingredient>
std::optional<Ingredient> known(const Kind<Ingredient>& kind, std::span<const EmbeddedDocument> embedded,
                                const IngredientTables& outside, const std::string& name) {
    if (const Ingredient* found = kind.find(outside, name)) {
        return *found;
    }
    auto ingredient = built_in(kind, embedded, name);
    if (ingredient) {
        const Ingredient* replacing = kind.find(outside, ingredient->name);
        return replacing == nullptr ? ingredient : *replacing;
    }
    return std::nullopt;
}

template <class Ingredient>
std::vector<std::string> names_of(const Ingredient& ingredient) {
    std::vector<std::string> names{ingredient.name};
    names.insert(names.end(), ingredient.aliases.begin(), ingredient.aliases.end());
    return names;
}

template <class Ingredient>
std::string nearest(const Kind<Ingredient>& kind, std::span<const EmbeddedDocument> embedded,
                    const IngredientTables& outside, const std::string& name) {
    std::vector<std::string> names;
    for (const Ingredient& ingredient : outside.*kind.table) {
        const auto more = names_of(ingredient);
        names.insert(names.end(), more.begin(), more.end());
    }
    for (const EmbeddedDocument& document : embedded) {
        if (document.path.starts_with(kind.folder)) {
            names.emplace_back(document.path.substr(kind.folder.size()));
        }
    }
    std::string word = nearest_word(name, names);
    const auto ingredient = known(kind, embedded, outside, word);
    for (const std::string& written : ingredient ? names_of(*ingredient) : std::vector<std::string>()) {
        if (lowered(written) == word) {
            return written;
        }
    }
    return word;
}

}  // namespace

std::optional<Fermentable> KnownIngredients::fermentable(const std::string& name) const {
    return known(fermentables, embedded_, outside_, name);
}

std::optional<Hop> KnownIngredients::hop(const std::string& name) const {
    return known(hops, embedded_, outside_, name);
}

std::optional<YeastClass> KnownIngredients::yeast(const std::string& name) const {
    return known(yeasts, embedded_, outside_, name);
}

std::string KnownIngredients::nearest_fermentable(const std::string& name) const {
    return nearest(fermentables, embedded_, outside_, name);
}

std::string KnownIngredients::nearest_hop(const std::string& name) const {
    return nearest(hops, embedded_, outside_, name);
}

std::string KnownIngredients::nearest_yeast(const std::string& name) const {
    return nearest(yeasts, embedded_, outside_, name);
}

}  // namespace entrywise

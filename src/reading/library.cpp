#include "reading/library.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/ingredient_reader.hpp"
#include "reading/packed_document.hpp"
#include "reading/style_reader.hpp"

namespace entrywise {

namespace {

constexpr std::string_view styles_folder = "styles/";
constexpr std::string_view suffix = ".yaml";

std::string path_of(const StyleName& name) {
    return fmt::format("{}{}/{}{}", styles_folder, name.guide, name.code, suffix);
}

/// The style whose file has this path; nothing for other data files.
std::optional<StyleName> style_of_path(std::string_view path) {
    if (!path.starts_with(styles_folder) || !path.ends_with(suffix)) {
        return std::nullopt;
    }
    path.remove_prefix(styles_folder.size());
    path.remove_suffix(suffix.size());
    const auto slash = path.find('/');
    if (slash == std::string_view::npos) {
        return std::nullopt;
    }
    return StyleName{std::string(path.substr(0, slash)), std::string(path.substr(slash + 1))};
}

/// Orders codes as guides do: by number first, then by what stands behind it; codes without a number come
/// last.
bool comes_before(const StyleName& left, const StyleName& right) {
    const auto key = [](const StyleName& name) {
        const auto digits = std::min(name.code.find_first_not_of("0123456789"), name.code.size());
        return std::make_tuple(name.guide, digits == 0, digits, name.code);
    };
    return key(left) < key(right);
}

template <class Value>
void append(std::vector<Value>& all, const std::vector<Value>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

/// Puts the entries of an outside file before those known, and takes out the ones that they replace.
template <class Ingredient>
std::vector<Fault> put_first(const Outcome<std::vector<Ingredient>>& outside,
                             std::vector<Ingredient>& known) {
    if (!outside) {
        return outside.faults;
    }
    std::vector<Ingredient> merged = *outside;
    std::copy_if(known.begin(), known.end(), std::back_inserter(merged), [&](const Ingredient& ingredient) {
        return std::none_of(outside->begin(), outside->end(), [&](const Ingredient& replacing) {
            return lowered(replacing.name) == lowered(ingredient.name);
        });
    });
    known = std::move(merged);
    return {};
}

template <class Ingredient>
void take(Outcome<std::vector<Ingredient>> read, std::vector<Ingredient>& table, std::vector<Fault>& faults) {
    append(faults, read.faults);
    if (read) {
        table = std::move(*read.value);
    }
}

}  // namespace

std::string Library::file_of(const std::string& path) const {
    const auto outside = outside_.file_of.find(path);
    return outside == outside_.file_of.end() ? path : outside->second;
}

Outcome<Node> Library::document(const std::string& path) const {
    const auto outside = outside_.file_of.find(path);
    if (outside != outside_.file_of.end()) {
        return outside_.read(outside->second);
    }
    const EmbeddedDocument* embedded = find_document(embedded_, path);
    auto node = embedded == nullptr ? std::nullopt : unpacked(embedded->bytes);
    if (!node) {
        Fault fault;
        fault.place.file = path;
        fault.found = embedded == nullptr ? "no such data file" : "a damaged data file in the program";
        fault.expected = "a data file of the program";
        return fault;
    }
    return std::move(*node);
}

std::vector<Fault> Library::add_ingredients(const std::string& file, IngredientTables& tables) const {
    const auto read = outside_.read(file);
    if (!read) {
        return read.faults;
    }
    const Node* format = value_of(*read, "format");
    const std::string kind = format == nullptr ? "" : format->text;
    if (kind.starts_with("entrywise/hops/")) {
        return put_first(read_hops(*read, file), tables.hops);
    }
    if (kind.starts_with("entrywise/yeast/")) {
        return put_first(read_yeasts(*read, file), tables.yeasts);
    }
    return put_first(read_fermentables(*read, file), tables.fermentables);
}

Outcome<IngredientTables> Library::ingredient_tables() const {
    const std::string fermentables = "recipes/ingredients/fermentables.yaml";
    const std::string hops = "recipes/ingredients/hops.yaml";
    const std::string yeasts = "recipes/ingredients/yeast.yaml";
    IngredientTables tables;
    std::vector<Fault> faults;
    const auto read = [&](const std::string& path, auto reader, auto& table) {
        const auto found = document(path);
        append(faults, found.faults);
        if (found) {
            take(reader(*found, path), table, faults);
        }
    };
    read(fermentables, read_fermentables, tables.fermentables);
    read(hops, read_hops, tables.hops);
    read(yeasts, read_yeasts, tables.yeasts);
    for (const std::string& file : outside_.ingredient_files) {
        append(faults, add_ingredients(file, tables));
    }
    if (!faults.empty()) {
        return faults;
    }
    return tables;
}

std::vector<StyleName> Library::all_style_names() const {
    std::vector<StyleName> names;
    const auto add = [&](std::string_view path) {
        if (auto name = style_of_path(path)) {
            names.push_back(std::move(*name));
        }
    };
    for (const EmbeddedDocument& embedded : embedded_) {
        add(embedded.path);
    }
    for (const auto& [path, file] : outside_.file_of) {
        add(path);
    }
    std::sort(names.begin(), names.end(), comes_before);
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

std::vector<std::string> Library::guides() const {
    std::vector<std::string> guides;
    for (const StyleName& name : all_style_names()) {
        if (guides.empty() || guides.back() != name.guide) {
            guides.push_back(name.guide);
        }
    }
    return guides;
}

std::vector<StyleName> Library::style_names(const std::string& guide) const {
    std::vector<StyleName> names = all_style_names();
    std::erase_if(names, [&](const StyleName& name) { return lowered(name.guide) != lowered(guide); });
    return names;
}

std::optional<StyleName> Library::known_style(const StyleName& name) const {
    const std::string path = path_of(name);
    if (outside_.file_of.contains(path) || find_document(embedded_, path) != nullptr) {
        return name;
    }
    for (const StyleName& known : style_names(name.guide)) {
        if (lowered(known.code) == lowered(name.code)) {
            return known;
        }
    }
    return std::nullopt;
}

Outcome<Style> Library::style(const StyleName& name) const {
    const auto known = known_style(name);
    if (!known) {
        return unknown_style(name);
    }
    const std::string path = path_of(*known);
    const auto found = document(path);
    if (!found) {
        return found.faults;
    }
    return read_style(*found, *known, file_of(path));
}

Fault Library::unknown_style(const StyleName& name) const {
    Fault fault;
    fault.place.file = fmt::format("{}/{}", name.guide, name.code);
    fault.found = fmt::format("no style '{}' in the guide '{}'", name.code, name.guide);
    fault.expected = "the code of a known style";
    fault.remedy = "List the styles to see their codes.";
    const std::vector<StyleName> known = style_names(name.guide);
    if (known.empty()) {
        fault.found = fmt::format("the unknown guide '{}'", name.guide);
        fault.expected = fmt::format("a style of {}", listed(guides()));
        fault.nearest = nearest_word(name.guide, guides());
        return fault;
    }
    std::vector<std::string> codes;
    std::vector<std::string> style_titles;
    for (const StyleName& style_name : known) {
        codes.push_back(style_name.code);
        const auto read = style(style_name);
        style_titles.push_back(read ? lowered(read->name) : std::string());
    }
    fault.nearest = nearest_word(name.code, codes);
    std::string title = lowered(name.code);
    std::replace(title.begin(), title.end(), '-', ' ');
    const auto named = std::find(style_titles.begin(), style_titles.end(), nearest_word(title, style_titles));
    if (fault.nearest.empty() && named != style_titles.end() && !named->empty()) {
        fault.nearest = codes[static_cast<std::size_t>(named - style_titles.begin())];
    }
    return fault;
}

}  // namespace entrywise

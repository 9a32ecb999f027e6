#include "interchange/exchange.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/beerjson_reader.hpp"
#include "interchange/beerxml_reader.hpp"
#include "interchange/draft_document.hpp"
#include "interchange/exchange_log.hpp"
#include "interchange/json_document.hpp"
#include "interchange/recipe_table.hpp"
#include "interchange/xml_document.hpp"
#include "reading/recipe_reader.hpp"

namespace entrywise {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// How the format's recipes are found in a document, and one read.
struct RecordFormat {
    Outcome<Node> (*document)(std::string_view text, const std::string& file);
    std::vector<NamedRecord> (*recipes)(const Node& document, ExchangeLog& log);
    Draft (*draft)(const Node& recipe, ExchangeLog& log);
};

constexpr RecordFormat beerjson{json_document, beerjson_recipes, beerjson_draft};
constexpr RecordFormat beerxml{xml_document, beerxml_recipes, beerxml_draft};

std::string listing(const std::vector<NamedRecord>& recipes) {
    constexpr std::size_t most_listed = 30;
    std::vector<std::string> names;
    for (std::size_t index = 0; index < std::min(recipes.size(), most_listed); ++index) {
        names.push_back(fmt::format("{} {}", index + 1, in_quotes(recipes[index].name)));
    }
    if (recipes.size() > most_listed) {
        names.push_back(fmt::format("{} more", recipes.size() - most_listed));
    }
    return joined(names, ", ");
}

/// The one that is picked, or null after a fault.
const NamedRecord* picked(const std::vector<NamedRecord>& recipes, const std::string& pick,
                          ExchangeLog& log) {
    if (recipes.empty()) {
        return nullptr;
    }
    if (pick.empty() && recipes.size() == 1) {
        return &recipes.front();
    }
    std::vector<std::string> names;
    for (const NamedRecord& recipe : recipes) {
        names.push_back(recipe.name);
    }
    const auto by_name = std::find_if(recipes.begin(), recipes.end(), [&](const NamedRecord& recipe) {
        return lowered(recipe.name) == lowered(pick);
    });
    if (!pick.empty() && by_name != recipes.end()) {
        return &*by_name;
    }
    const auto number = number_from(pick);
    const bool is_counted = number && *number >= 1.0 && *number <= static_cast<double>(recipes.size());
    if (is_counted) {
        return &recipes[static_cast<std::size_t>(*number) - 1];
    }
    log.faults().add({}, {.found = pick.empty() ? fmt::format("{} recipes", recipes.size())
                                                : fmt::format("no recipe {}", in_quotes(pick)),
                          .expected = "one of these: " + listing(recipes),
                          .nearest = nearest_word(pick, names),
                          .remedy = "Choose one by name or number with --pick."});
    return nullptr;
}

/// Names are looked up one by one: more of them than any recipe has are not.
bool has_too_many(const Draft& draft, ExchangeLog& log) {
    constexpr std::size_t most_additions = 200;  // working value
    const std::size_t most = std::max(
        {draft.grist.size(), draft.hops.size(), draft.extras.size(), draft.yeasts.size(), draft.mash.size()});
    if (most > most_additions) {
        log.faults().add(draft.position, {.found = fmt::format("{} additions of a kind", most),
                                          .expected = fmt::format("at most {}", most_additions)});
    }
    return most > most_additions;
}

/// Whether the file says in the recipe file's own words what the style is.
bool has_style_in_our_words(const Draft& draft) {
    return draft.style || std::any_of(draft.addenda.begin(), draft.addenda.end(),
                                      [](const DraftAddendum& each) { return each.path == "style"; });
}

Outcome<ExchangedRecipe> recipe_of(Draft draft, const KnownIngredients& known, const StyleTitles& styles,
                                   ExchangeLog& log) {
    if (!log.faults().empty() || has_too_many(draft, log)) {
        return log.faults().in_order();
    }
    if (draft.style_reference) {
        draft.style =
            style_of(*draft.style_reference, has_style_in_our_words(draft) ? StyleTitles() : styles, log);
    }
    Node document = document_of(draft, known, log);
    if (!log.faults().empty()) {
        return log.faults().in_order();
    }
    Outcome<Recipe> recipe = read_recipe(document, known, log.file());
    if (!recipe) {
        return recipe.faults;
    }
    return ExchangedRecipe{*std::move(recipe.value), std::move(document), log.remarks()};
}

Outcome<ExchangedRecipe> recipe_in(const Node& document, const RecordFormat& format, const std::string& pick,
                                   const KnownIngredients& known, const StyleTitles& styles,
                                   ExchangeLog& log) {
    const std::vector<NamedRecord> recipes = format.recipes(document, log);
    const NamedRecord* const recipe = picked(recipes, pick, log);
    if (recipe == nullptr) {
        return log.faults().in_order();
    }
    return recipe_of(format.draft(*recipe->node, log), known, styles, log);
}

Outcome<ExchangedRecipe> read_records(const RecordFormat& format, std::string_view text,
                                      const std::string& pick, const KnownIngredients& known,
                                      const StyleTitles& styles, ExchangeLog& log) {
    const Outcome<Node> document = format.document(text, log.file());
    return document ? recipe_in(*document, format, pick, known, styles, log)
                    : Outcome<ExchangedRecipe>(document.faults);
}

}  // namespace

std::optional<Exchange> exchange_of(const std::string& path, std::string_view text) {
    if (text.starts_with(byte_order_mark)) {
        text.remove_prefix(byte_order_mark.size());
    }
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    const char first = begin == std::string_view::npos ? '\0' : text[begin];
    if (first == '<') {
        return Exchange::beerxml;
    }
    if (first == '{' && text.find("\"beerjson\"") != std::string_view::npos) {
        return Exchange::beerjson;
    }
    constexpr std::size_t where_a_format_stands = 4096;
    if (text.substr(0, where_a_format_stands).find("entrywise/recipe/") != std::string_view::npos) {
        return std::nullopt;
    }
    const std::string name = lowered(path);
    if (name.ends_with(".json")) {
        return Exchange::beerjson;
    }
    if (name.ends_with(".xml")) {
        return Exchange::beerxml;
    }
    const bool is_table = name.ends_with(".csv") || name.ends_with(".tsv") || starts_as_recipe_table(text);
    return is_table ? std::optional(Exchange::table) : std::nullopt;
}

Outcome<ExchangedRecipe> read_exchange(Exchange exchange, std::string_view text, const std::string& file,
                                       const std::string& pick, const KnownIngredients& known,
                                       const StyleTitles& styles) {
    ExchangeLog log(file);
    switch (exchange) {
        case Exchange::beerjson:
            return read_records(beerjson, text, pick, known, styles, log);
        case Exchange::beerxml:
            return read_records(beerxml, text, pick, known, styles, log);
        case Exchange::table:
            return recipe_of(recipe_table_draft(text, known, log), known, styles, log);
    }
    return log.faults().in_order();
}

Outcome<ExchangedRecipe> read_beerjson(const Node& document, const std::string& file, const std::string& pick,
                                       const KnownIngredients& known, const StyleTitles& styles) {
    ExchangeLog log(file);
    return recipe_in(document, beerjson, pick, known, styles, log);
}

}  // namespace entrywise

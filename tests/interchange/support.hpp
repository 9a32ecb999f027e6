#pragma once

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "base/file.hpp"
#include "interchange/exchange.hpp"
#include "reading/embedded.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/library.hpp"

namespace entrywise::testing {

inline const KnownIngredients& known_ingredients() {
    static const KnownIngredients known(embedded_documents(), {});
    return known;
}

/// A whole recipe in the words of a standard, with something of everything that is read.
inline std::string sample(const std::string& name) {
    const auto text = read_file(ENTRYWISE_SOURCE_DIR "/tests/data/exchange/" + name, most_exchange_bytes);
    REQUIRE(text);
    return *text;
}

inline Outcome<ExchangedRecipe> exchanged(Exchange exchange, const std::string& text,
                                          const std::string& pick = {}) {
    return read_exchange(exchange, text, "file", pick, known_ingredients());
}

/// Every style that is built in, those of bjcp-2021 first.
inline std::vector<StyleTitle> known_titles() {
    static const std::vector<StyleTitle> titles = [] {
        const Library library(embedded_documents());
        std::vector<StyleTitle> read;
        for (const char* guide : {"bjcp-2021", "ba-2025"}) {
            for (const StyleName& name : library.style_names(guide)) {
                read.push_back({name, library.style(name)->name});
            }
        }
        return read;
    }();
    return titles;
}

/// The recipe in a text that has to be sound.
inline ExchangedRecipe sound(Exchange exchange, const std::string& text, const std::string& pick = {}) {
    const auto recipe = exchanged(exchange, text, pick);
    for (const Fault& fault : recipe.faults) {
        MESSAGE(to_line(fault));
    }
    REQUIRE(recipe);
    return *recipe;
}

/// The one fault of a text that has just one.
inline std::string only_fault(Exchange exchange, const std::string& text, const std::string& pick = {}) {
    const auto recipe = exchanged(exchange, text, pick);
    REQUIRE_FALSE(recipe);
    REQUIRE(recipe.faults.size() == 1);
    return to_line(recipe.faults.front());
}

inline bool is_remarked(const ExchangedRecipe& recipe, RemarkKind kind, const std::string& text) {
    for (const Remark& remark : recipe.remarks) {
        if (remark.kind == kind && remark.text.find(text) != std::string::npos) {
            return true;
        }
    }
    return false;
}

/// The text with the first of something put in another's place.
inline std::string with(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

}  // namespace entrywise::testing

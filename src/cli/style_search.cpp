#include "cli/style_search.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <set>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "report/plain_ascii.hpp"

namespace entrywise {

namespace {

std::string plain(const std::string& text) {
    return lowered(plain_ascii(visible(text)));
}

bool is_letter_or_digit(char character) {
    return (character >= 'a' && character <= 'z') || (character >= '0' && character <= '9');
}

/// The words of a text in plain lower case, whatever stands between them.
std::vector<std::string> words_in(const std::string& text) {
    std::vector<std::string> words(1);
    for (const char character : plain(text)) {
        if (is_letter_or_digit(character)) {
            words.back() += character;
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

bool are_initials(const std::string& word, const std::string& name) {
    constexpr std::size_t fewest = 3;
    std::string initials;
    for (const std::string& each : words_in(name)) {
        initials += each.front();
    }
    return word.size() >= fewest && initials.find(word) != std::string::npos;
}

bool holds(const Style& style, const std::string& word) {
    const std::string wanted = plain(word);
    const auto is_in = [&](const std::string& text) { return plain(text).find(wanted) != std::string::npos; };
    return is_in(style.code) || is_in(style.name) || is_in(style.category) ||
           are_initials(wanted, style.name);
}

std::string nearest_in_names(const std::vector<Style>& styles, const std::string& word) {
    std::set<std::string> known;
    for (const Style& style : styles) {
        for (std::string& each : words_in(style.name)) {
            known.insert(std::move(each));
        }
    }
    return nearest_word(plain(word), {known.begin(), known.end()});
}

}  // namespace

Outcome<StylesFound> styles_found(const std::vector<Style>& styles, const std::vector<std::string>& words) {
    StylesFound found{styles, {}};
    for (const std::string& word : words) {
        const bool is_known =
            std::any_of(styles.begin(), styles.end(), [&](const Style& style) { return holds(style, word); });
        const std::string taken = is_known ? word : nearest_in_names(styles, word);
        if (taken.empty()) {
            return Fault{.place = {"command line", {}},
                         .found = fmt::format("no style whose code or name holds '{}'", word),
                         .expected = "a word of a style's name, or a part of its code",
                         .nearest = {},
                         .remedy = {}};
        }
        std::erase_if(found.styles, [&](const Style& style) { return !holds(style, taken); });
        found.words.push_back(taken);
    }
    if (found.styles.empty()) {
        return Fault{.place = {"command line", {}},
                     .found = fmt::format("no style that holds all of '{}'", joined(found.words, "', '")),
                     .expected = "words that stand in one style's name",
                     .nearest = {},
                     .remedy = "Search for fewer words."};
    }
    return found;
}

}  // namespace entrywise

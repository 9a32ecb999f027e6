#include "report/terminal.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/text.hpp"
#include "report/plain_ascii.hpp"

namespace entrywise {

namespace {

// Select Graphic Rendition of ECMA-48.
std::string painted(std::string_view text, std::string_view rendition, const TextStyle& style) {
    return style.color ? fmt::format("\033[{}m{}\033[0m", rendition, text) : std::string(text);
}

/// Lines much longer than this are hard to read, so text does not fill a wide page.
constexpr std::size_t longest_readable = 100;

/// Where in the text so many characters end.
std::size_t bytes_of(std::string_view text, std::size_t characters) {
    std::size_t at = 0;
    for (; characters > 0 && at < text.size(); --characters) {
        ++at;
        while (at < text.size() && is_continuation(text[at])) {
            ++at;
        }
    }
    return at;
}

std::string_view cut_mark(const TextStyle& style) {
    return style.ascii ? "~" : "…";
}

std::string repeated(std::string_view text, std::size_t times) {
    std::string result;
    for (std::size_t time = 0; time < times; ++time) {
        result += text;
    }
    return result;
}

bool ends_in_a_digit(const std::string& word) {
    return !word.empty() && word.back() >= '0' && word.back() <= '9';
}

/// The words of a text as lines are filled with them: a number stays with its unit, and a word that
/// is longer than a line is broken.
std::vector<std::string> words_of(std::string_view text, std::size_t columns) {
    constexpr std::size_t longest_pair = 24;
    std::vector<std::string> words;
    for (std::string_view word : split(text, " ")) {
        if (word.empty()) {
            continue;
        }
        const bool may_be_a_unit = word != "of" && word != "to" && word != "and";
        const bool follows_a_number = may_be_a_unit && !words.empty() && ends_in_a_digit(words.back()) &&
                                      character_count(words.back()) + character_count(word) < longest_pair;
        if (follows_a_number) {
            words.back().append(" ").append(word);
            continue;
        }
        while (character_count(word) > columns) {
            const std::size_t bytes = bytes_of(word, columns);
            words.emplace_back(word.substr(0, bytes));
            word.remove_prefix(bytes);
        }
        words.emplace_back(word);
    }
    return words;
}

}  // namespace

std::string shown(std::string_view text, const TextStyle& style) {
    return style.ascii ? plain_ascii(visible(text)) : visible(text);
}

std::string bold(std::string_view text, const TextStyle& style) {
    return painted(text, "1", style);
}

std::string dim(std::string_view text, const TextStyle& style) {
    return painted(text, "2", style);
}

std::string accented(std::string_view text, const TextStyle& style) {
    return painted(text, "1;35", style);
}

std::string at_left(std::string_view text, std::size_t columns) {
    const std::size_t taken = character_count(text);
    return std::string(text) + std::string(taken < columns ? columns - taken : 0, ' ');
}

std::string at_right(std::string_view text, std::size_t columns) {
    const std::size_t taken = character_count(text);
    return std::string(taken < columns ? columns - taken : 0, ' ') + std::string(text);
}

std::string cut_end(std::string_view text, std::size_t columns, const TextStyle& style) {
    if (character_count(text) <= columns) {
        return std::string(text);
    }
    return std::string(text.substr(0, bytes_of(text, columns - 1))).append(cut_mark(style));
}

std::string cut_front(std::string_view text, std::size_t columns, const TextStyle& style) {
    const std::size_t characters = character_count(text);
    if (characters <= columns) {
        return std::string(text);
    }
    return std::string(cut_mark(style)).append(text.substr(bytes_of(text, characters - columns + 1)));
}

std::string paragraph(std::string_view text, std::size_t first, std::size_t rest, const TextStyle& style) {
    const std::size_t columns = std::min(style.width, longest_readable);
    std::string result;
    std::size_t used = 0;
    for (const std::string& word : words_of(text, columns - std::max(first, rest))) {
        const std::size_t length = character_count(word);
        if (!result.empty() && used + 1 + length <= columns) {
            result.append(" ").append(word);
            used += 1 + length;
            continue;
        }
        const std::size_t indent = result.empty() ? first : rest;
        result.append(result.empty() ? "" : "\n").append(indent, ' ').append(word);
        used = indent + length;
    }
    return result.empty() ? result : result + '\n';
}

std::string without_blanks_at_end(std::string text) {
    text.erase(text.find_last_not_of(' ') + 1);
    return text;
}

std::string rule(const TextStyle& style) {
    return dim(repeated(style.ascii ? "-" : "─", style.width), style) + '\n';
}

std::string_view dash(const TextStyle& style) {
    return style.ascii ? "-" : "–";
}

}  // namespace entrywise

#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "tests/report/sample_check.hpp"

namespace entrywise {

inline std::size_t count_of(std::string_view text, std::string_view part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string_view::npos;
         at = text.find(part, at + part.size())) {
        ++count;
    }
    return count;
}

/// The pictures of a page, each from its first tag to its last.
inline std::vector<std::string> pictures_of(const std::string& page) {
    std::vector<std::string> pictures;
    for (std::size_t at = page.find("<svg"); at != std::string::npos; at = page.find("<svg", at + 1)) {
        const std::size_t end = page.find("</svg>", at);
        pictures.push_back(page.substr(at, end - at + 6));
    }
    return pictures;
}

/// The text of a page: markup left out, what was escaped put back.
inline std::string read_aloud(std::string_view page) {
    std::string text;
    bool in_markup = false;
    for (const char letter : page) {
        in_markup = letter == '<' || (in_markup && letter != '>');
        if (!in_markup && letter != '>') {
            text += letter;
        }
        if (letter == '>') {
            text += ' ';
        }
    }
    return text;
}

}  // namespace entrywise

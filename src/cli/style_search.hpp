#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What a search among styles found, and by which words: those asked for, or the nearest known ones.
struct StylesFound {
    std::vector<Style> styles;
    std::vector<std::string> words;
};

/// The styles whose code, name or category holds every one of the words, case and accents aside; a word may
/// also be the initials of words of a name that follow each other, as `ipa` is. A word that is in none is
/// taken for the nearest one that is in any name; if none is near, that is a fault. Without words all are
/// found.
Outcome<StylesFound> styles_found(const std::vector<Style>& styles, const std::vector<std::string>& words);

}  // namespace entrywise

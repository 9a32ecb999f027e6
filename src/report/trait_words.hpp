#pragma once

#include <string>
#include <vector>

#include "judging/contrast.hpp"
#include "report/beer_numbers.hpp"
#include "report/terminal.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What a number of a guide is called, and how it is written.
struct NumberWords {
    std::string_view key;   ///< as the machine formats name it
    std::string_view name;  ///< as text names it
    std::string_view unit;  ///< empty for gravities
    int decimals = 0;
};
NumberWords words_for(Number number);

/// A trait as a line of a table begins: `hop aroma`, `bitterness`, `original gravity`.
std::string title_of(const Trait& trait);

/// What a style accepts of an attribute: `low to medium-low`.
std::string accepted_words(Attribute attribute, const Expectation& expectation);

/// The range that a style prints of a number: `1.056–1.070`, `40–70 IBU`, `up to 5 SRM`.
std::string range_words(Number number, const PlainRange& range, const TextStyle& style);

/// How the second style of a contrast differs: `more hop aroma`, `paler`, `a drier finish`.
std::string second_in_words(const Contrast& contrast);

/// Names of a guide as a sentence lists them, without hyphens: `pale malt, oat flakes`.
std::string plain_words(const std::vector<std::string>& names);

}  // namespace entrywise

#include "report/color_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace entrywise {

namespace {

struct ColorName {
    double up_to;  ///< SRM
    std::string_view word;
};

constexpr std::array<ColorName, 9> names{{
    {3.0, "straw"},
    {4.5, "yellow"},
    {6.0, "gold"},
    {9.5, "amber"},
    {14.0, "deep amber"},
    {17.5, "copper"},
    {22.0, "brown"},
    {30.0, "dark brown"},
    {35.0, "very dark brown"},
}};

}  // namespace

std::string_view color_word(Color color) {
    const auto* const found = std::find_if(
        names.begin(), names.end(), [&](const ColorName& name) { return in(color, srm) < name.up_to; });
    return found == names.end() ? "black" : found->word;
}

std::string color_words(const Range<Color>& range) {
    // A range that ends where the next name begins ends with the name before.
    constexpr Color palest = 0.0 * srm;
    constexpr Color darkest = 60.0 * srm;
    const std::string_view low = color_word(range.low.value_or(palest));
    constexpr Color hardly_less = 0.05 * srm;
    const std::string_view high = color_word(range.high.value_or(darkest) - hardly_less);
    return low == high ? std::string(low) : fmt::format("{} to {}", low, high);
}

}  // namespace entrywise

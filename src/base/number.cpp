#include "base/number.hpp"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <system_error>

namespace entrywise {

namespace {

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

bool starts_like_a_number(std::string_view text) {
    const bool negative = !text.empty() && text.front() == '-';
    const std::string_view digits = negative ? text.substr(1) : text;
    if (digits.empty()) {
        return false;
    }
    return is_digit(digits[0]) || (digits[0] == '.' && digits.size() > 1 && is_digit(digits[1]));
}

/// Whether digits other than zero stand before the exponent: such a number that reads as zero was too small.
bool has_a_nonzero_digit(std::string_view number) {
    return number.substr(0, number.find_first_of("eE")).find_first_of("123456789") != std::string_view::npos;
}

constexpr std::array steps_per_unit{1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};  ///< by decimals

/// The number in whole steps of its last decimal; nothing where it is too large or lies so near to the middle
/// between two steps that only all of its digits can tell which is nearer.
std::optional<double> whole_steps_of(double number, int decimals) {
    constexpr double most_steps = 1e9;
    constexpr double surely_no_tie = 1e-6;
    if (decimals < 0 || static_cast<std::size_t>(decimals) >= steps_per_unit.size()) {
        return std::nullopt;
    }
    const double steps = number * steps_per_unit[static_cast<std::size_t>(decimals)];
    const double whole_steps = std::nearbyint(steps);
    const bool is_sure = std::abs(steps) < most_steps && std::abs(steps - whole_steps) < 0.5 - surely_no_tie;
    return is_sure ? std::optional(whole_steps) : std::nullopt;
}

/// Whole steps of the last decimal as a decimal number.
std::string text_of_steps(double whole_steps, int decimals) {
    const auto behind_the_point = static_cast<std::size_t>(decimals);
    std::string text = fmt::format_int(static_cast<std::int64_t>(std::abs(whole_steps))).str();
    if (text.size() <= behind_the_point) {
        text.insert(0, behind_the_point + 1 - text.size(), '0');
    }
    if (behind_the_point > 0) {
        text.insert(text.size() - behind_the_point, 1, '.');
    }
    return whole_steps < 0.0 ? '-' + text : text;
}

}  // namespace

std::optional<LeadingNumber> leading_number(std::string_view text) {
    if (!starts_like_a_number(text)) {
        return std::nullopt;
    }
    // `5.0..6.0` is a span: the number ends before the two dots.
    const auto span = text.find("..");
    const std::string_view candidate = text.substr(0, span);
    double number = 0.0;
    const auto [end, error] =
        fast_float::from_chars(candidate.data(), candidate.data() + candidate.size(), number);
    if (error != std::errc() || !std::isfinite(number)) {
        return std::nullopt;
    }
    const auto length = static_cast<std::size_t>(end - text.data());
    if (number == 0.0 && has_a_nonzero_digit(text.substr(0, length))) {
        return std::nullopt;
    }
    return LeadingNumber{number, text.substr(length)};
}

std::optional<double> number_from(std::string_view text) {
    const auto leading = leading_number(text);
    if (!leading || !leading->rest.empty()) {
        return std::nullopt;
    }
    return leading->number;
}

std::string fixed(double number, int decimals) {
    if (const auto whole_steps = whole_steps_of(number, decimals)) {
        return text_of_steps(*whole_steps, decimals);
    }
    std::string text = fmt::format("{:.{}f}", number, decimals);
    const bool negative_zero = text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos;
    return negative_zero ? text.substr(1) : text;
}

std::string shortest(double number) {
    return fmt::format("{}", number);
}

double rounded(double number, int decimals) {
    if (const auto whole_steps = whole_steps_of(number, decimals)) {
        // The quotient of two whole numbers is the double nearest to that decimal, as reading its text gives
        // it.
        return *whole_steps / steps_per_unit[static_cast<std::size_t>(decimals)] + 0.0;
    }
    return number_from(fixed(number, decimals)).value_or(number);
}

}  // namespace entrywise

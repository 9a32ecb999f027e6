#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace entrywise {

/// The decimal number that the whole text is, with `.` as the decimal mark whatever the locale. Hexadecimal,
/// infinite and not-a-number forms, a leading plus, and numbers too large or too small for a double are no
/// numbers here.
std::optional<double> number_from(std::string_view text);

/// A number read off the front of a text, and what stands behind it.
struct LeadingNumber {
    double number = 0.0;
    std::string_view rest;
};

/// The decimal number at the front of the text, under the rules of `number_from`.
std::optional<LeadingNumber> leading_number(std::string_view text);

/// The number with a fixed count of decimals, never a negative zero.
std::string fixed(double number, int decimals);

/// The shortest text that reads back as the very same number.
std::string shortest(double number);

/// The number rounded to a count of decimals: the value that `fixed` prints.
double rounded(double number, int decimals);

}  // namespace entrywise

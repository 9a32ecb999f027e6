#include "report/numbers_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/color.hpp"
#include "report/gauge.hpp"
#include "report/measured.hpp"
#include "report/number_table.hpp"

namespace entrywise {

namespace {

constexpr std::size_t inside_columns = 6;
constexpr std::size_t fewest_gauge_columns = 10;

std::string name_with_unit(const BeerNumber& number) {
    const bool bare = number.unit == "SG";
    return bare ? std::string(number.name) : fmt::format("{}, {}", number.name, number.unit);
}

std::size_t gauge_columns(const TextStyle& style) {
    constexpr std::size_t most = 41;
    const std::size_t taken = table_columns + inside_columns + 2 * gap_columns;
    const std::size_t left = style.width > taken ? style.width - taken : 0;
    return left < fewest_gauge_columns ? 0 : std::min(left, most);
}

std::string gauge_of(const BeerNumber& number, const PlainRange& range, const TextStyle& style) {
    const std::size_t columns = gauge_columns(style);
    return columns == 0
               ? std::string()
               : std::string(gap_columns, ' ') + gauge(number.value, range.low, range.high, columns, style);
}

std::string number_line(const BeerNumber& number, const std::optional<PlainRange>& range, double within,
                        const TextStyle& style) {
    const std::string line =
        table_line(name_with_unit(number), fixed(number.value.median, number.decimals),
                   interval_text(number.value, number.decimals, style),
                   range ? range_text(*range, number.decimals, style) : std::string("  not given"));
    if (!range) {
        return line + '\n';
    }
    const std::string inside = at_right(percent_text(within), inside_columns);
    const bool mostly_outside = within < 0.5;
    return line + std::string(gap_columns, ' ') + (mostly_outside ? accented(inside, style) : inside) +
           without_blanks_at_end(gauge_of(number, *range, style)) + '\n';
}

/// The line of the color once more, in the other of the two units in use.
std::string ebc_line(const BeerNumber& color, const std::optional<PlainRange>& range,
                     const TextStyle& style) {
    constexpr int decimals = 0;
    const Interval80<double> value{in_ebc(color.value.median * srm), in_ebc(color.value.low * srm),
                                   in_ebc(color.value.high * srm)};
    std::optional<PlainRange> in_other_unit = range;
    if (in_other_unit && in_other_unit->low) {
        in_other_unit->low = in_ebc(*in_other_unit->low * srm);
    }
    if (in_other_unit && in_other_unit->high) {
        in_other_unit->high = in_ebc(*in_other_unit->high * srm);
    }
    const std::string line =
        table_line("  in EBC", fixed(value.median, decimals), interval_text(value, decimals, style),
                   in_other_unit ? range_text(*in_other_unit, decimals, style) : std::string());
    return dim(without_blanks_at_end(line), style) + '\n';
}

double chance_within(const Sheet& sheet, Number number) {
    const auto check = std::find_if(sheet.numbers.begin(), sheet.numbers.end(),
                                    [number](const NumberCheck& each) { return each.number == number; });
    return check == sheet.numbers.end() ? 1.0 : check->within;
}

std::string outside_text(const Check& check, const TextStyle& style) {
    std::vector<std::string> outside;
    for (const Number each : guide_numbers()) {
        const auto range = range_of(check.style.ranges, each);
        const BeerNumber number = number_of(check.beer, each);
        const std::string_view side = range ? side_of(number, *range) : std::string_view();
        if (!side.empty()) {
            outside.push_back(fmt::format("{} ({})", number.name, side));
        }
    }
    return outside.empty()
               ? std::string()
               : paragraph(fmt::format("Most likely outside: {}.", listed(outside, "and")), 0, 0, style);
}

std::string others_text(const Beer& beer, const TextStyle& style) {
    std::vector<std::string> others;
    for (const BeerNumber& number : numbers_of(beer)) {
        if (number.key == "carbonation" || number.key == "real_extract" ||
            number.key == "apparent_attenuation") {
            others.push_back(fmt::format("{} {} {} ({}{}{})", number.name,
                                         fixed(number.value.median, number.decimals), number.unit,
                                         fixed(number.value.low, number.decimals), dash(style),
                                         fixed(number.value.high, number.decimals)));
        }
    }
    return paragraph(shown(fmt::format("Also: {}.", listed(others, "and")), style), 0, 0, style);
}

}  // namespace

std::string numbers_text(const Check& check, const TextStyle& style) {
    const std::string head = table_line("Numbers", "beer", at_right("8 in 10", 9), at_right("style", 8)) +
                             std::string(gap_columns, ' ') + at_right("inside", inside_columns);
    std::string text = bold(head, style) + '\n';
    for (const Number each : guide_numbers()) {
        const BeerNumber number = number_of(check.beer, each);
        const auto range = range_of(check.style.ranges, each);
        text += number_line(number, range, chance_within(check.sheet, each), style);
        if (each == Number::color) {
            text += ebc_line(number, range, style);
        }
    }
    return text + outside_text(check, style) + others_text(check.beer, style) +
           measured_text(check.recipe.measured, style);
}

}  // namespace entrywise

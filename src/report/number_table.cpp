#include "report/number_table.hpp"

#include "base/number.hpp"
#include "base/text.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

constexpr std::size_t end_columns = (span_columns - 1) / 2;

/// A style's border as guides print it: gravity with all its decimals, others with those they need.
std::string ends_around(std::string_view low, std::string_view middle, std::string_view high) {
    return at_left(at_right(low, end_columns) + std::string(middle) + std::string(high), span_columns);
}

}  // namespace

std::string span_text(std::string_view low, std::string_view high, const TextStyle& style) {
    return ends_around(low, dash(style), high);
}

std::string interval_text(const Interval80<double>& interval, int decimals, const TextStyle& style) {
    return span_text(fixed(interval.low, decimals), fixed(interval.high, decimals), style);
}

std::string range_text(const PlainRange& range, int decimals, const TextStyle& style) {
    const std::string high =
        range.high ? (range.below_high ? "<" : "") + range_end_text(*range.high, decimals) : std::string();
    if (range.low && range.high) {
        return span_text(range_end_text(*range.low, decimals), high, style);
    }
    if (range.low) {
        return ends_around(range_end_text(*range.low, decimals), " ", "up");
    }
    return ends_around("to", " ", high);
}

std::string percent_text(double chance) {
    const double percents = rounded(chance * 100.0, 0);
    if (percents > 99.0) {
        return ">99 %";
    }
    return percents < 1.0 ? "<1 %" : fixed(percents, 0) + " %";
}

std::string table_line(std::string_view name, std::string_view value, std::string_view interval,
                       std::string_view range) {
    // The value stands at the end of its columns; a long heading of it may reach into the blanks after the
    // name.
    const std::string gap(gap_columns, ' ');
    const std::size_t left = name_columns + gap_columns + value_columns - character_count(name);
    return std::string(name) + at_right(value, left) + gap + at_left(interval, span_columns) + gap +
           at_left(range, span_columns);
}

}  // namespace entrywise

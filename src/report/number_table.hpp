#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "report/beer_numbers.hpp"
#include "report/terminal.hpp"

namespace entrywise {

// The columns that all tables of a text report share, so that they stand under each other:
// name, value, the interval of eight in ten, a range, and what is left of the page.

inline constexpr std::size_t name_columns = 16;
inline constexpr std::size_t value_columns = 5;
inline constexpr std::size_t span_columns = 11;
inline constexpr std::size_t gap_columns = 2;

/// The columns that name, value, interval and range take, with the gaps between them.
inline constexpr std::size_t table_columns =
    name_columns + value_columns + 2 * span_columns + 3 * gap_columns;

/// `low–high` with the dash at the middle of the span's columns.
std::string span_text(std::string_view low, std::string_view high, const TextStyle& style);

/// An estimate's interval, and a style's range, as `span_text`; an open end is told in words.
std::string interval_text(const Interval80<double>& interval, int decimals, const TextStyle& style);
std::string range_text(const PlainRange& range, int decimals, const TextStyle& style);

/// A chance in percent. It comes from a count of draws, so that none is ever printed as certain.
std::string percent_text(double chance);

/// One line of a table without its end; the name takes at most its columns, empty texts leave theirs blank.
std::string table_line(std::string_view name, std::string_view value, std::string_view interval,
                       std::string_view range);

}  // namespace entrywise

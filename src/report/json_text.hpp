#pragma once

#include <nlohmann/json.hpp>

#include <cstddef>
#include <optional>
#include <string>

#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

// How many decimals points, chances and levels have in JSON.
inline constexpr int json_points_decimals = 2;
inline constexpr int json_chance_decimals = 3;
inline constexpr int json_level_decimals = 2;

/// JSON objects keep the order in which their keys were set.
using Json = nlohmann::ordered_json;

/// The document as indented text, last byte a newline. It is ASCII alone, every other character escaped, so
/// that nothing in it steers a terminal that shows it; bytes that are not UTF-8 are replaced. Never throws
/// for bad text.
std::string json_text(const Json& document);

/// An empty object with room for so many keys, for one of which many are written: as it grows it copies those
/// that it has.
Json json_object(std::size_t keys);

/// {"median", "low", "high"}, rounded to so many decimals.
Json json_interval(const Interval80<double>& interval, int decimals);

/// The number rounded to so many decimals; null if it is not finite.
Json json_number(double number, int decimals);

/// The number, or null where there is none.
Json json_or_null(std::optional<double> number);

/// A line or a column of a file, or null where it is not known.
Json json_line(int line_or_column);

/// {"name", "file"}.
Json json_recipe(const Recipe& recipe);

}  // namespace entrywise

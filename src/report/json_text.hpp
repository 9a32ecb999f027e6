#pragma once

#include <nlohmann/json.hpp>

#include <string>

#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// JSON objects keep the order in which their keys were set.
using Json = nlohmann::ordered_json;

/// The document as indented text, last byte a newline. It is ASCII alone, every other character escaped, so
/// that nothing in it steers a terminal that shows it; bytes that are not UTF-8 are replaced. Never throws
/// for bad text.
std::string json_text(const Json& document);

/// {"median", "low", "high"}, rounded to so many decimals.
Json json_interval(const Interval80<double>& interval, int decimals);

/// The number rounded to so many decimals; null if it is not finite.
Json json_number(double number, int decimals);

/// {"name", "file"}.
Json json_recipe(const Recipe& recipe);

}  // namespace entrywise

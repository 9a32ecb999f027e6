#pragma once

#include <string>

#include "advice/explain.hpp"
#include "report/terminal.hpp"
#include "style/handbook.hpp"

namespace entrywise {

/// A judge's notes traced to the recipe, for reading: each note with the chance that the recipe explains it,
/// where the beer stands, what moves it and what else to look at; the points given beside those expected,
/// where any were given; a draft of the feedback; and the sum of it in the last lines. Points are told of
/// only where the judge gave some.
std::string explain_text(const Explanation& explanation, const Handbook& handbook, const TextStyle& style);

}  // namespace entrywise

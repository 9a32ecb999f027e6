#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// The numbers of a beer against the ranges of a style as a table, with a gauge where the page has room for
/// it, and in a sentence what most likely lies outside.
std::string numbers_text(const Check& check, const TextStyle& style);

}  // namespace entrywise

#pragma once

#include <string>

#include "recipe/recipe.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// A sentence that tells which numbers were measured, not estimated; empty if none was.
std::string measured_words(const Measured& measured);

/// The same as a paragraph.
std::string measured_text(const Measured& measured, const TextStyle& style);

}  // namespace entrywise

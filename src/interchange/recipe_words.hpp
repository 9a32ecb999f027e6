#pragma once

#include <string_view>

#include "recipe/recipe.hpp"

namespace entrywise {

/// The words of a recipe file.
std::string_view word_of(GristUse use);
std::string_view word_of(HopUse use);
std::string_view word_of(HopForm form);
std::string_view word_of(ExtraKind kind);
std::string_view word_of(ExtraUse use);

/// The key that a recipe file names such a thing with: `malt`, `sugar` or `extract`.
std::string_view name_key_of(FermentableKind kind);

}  // namespace entrywise

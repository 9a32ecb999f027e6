#pragma once

#include <string>

#include "style/style.hpp"

namespace entrywise {

/// How usual something is for a style.
enum class Customary { usual, possible, seldom };

/// Of a class of yeast.
Customary custom_of_yeast(const Custom& custom, const std::string& yeast_class);

/// Of a family of hops; a style that says `any` takes all families.
Customary custom_of_hops(const Custom& custom, const std::string& family);

}  // namespace entrywise

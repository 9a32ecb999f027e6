#pragma once

#include <string>

#include "tools/validation/page.hpp"

namespace entrywise {

/// What the page opens with.
std::string what_is_weak(const Accuracy& accuracy);

}  // namespace entrywise

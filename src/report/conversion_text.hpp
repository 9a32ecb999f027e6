#pragma once

#include <string>
#include <vector>

#include "interchange/remark.hpp"

namespace entrywise {

/// What there is to know of a conversion, one line each with its place first; no text where there is nothing.
std::string conversion_text(const std::vector<Remark>& remarks);

}  // namespace entrywise

#pragma once

#include <string>

#include "style/style.hpp"

namespace entrywise {

/// The style as it heads a report: `21A American IPA`.
std::string style_title(const Style& style);

}  // namespace entrywise

#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// What is sensed section by section, with pictures: `name` and `rows` of each section. What the style does
/// not want and the beer does not have has no row; `rightly_absent` lists it.
Json profile_values(const Check& check);

}  // namespace entrywise

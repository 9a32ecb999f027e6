#pragma once

#include "style/style.hpp"

namespace entrywise {

/// What a judge holds an entry of a specialty style against: the declared base style, except where the
/// specialty style states a range or a level of its own. What a specialty style only takes for granted gives
/// way to the base. Notes and grist of both count; name, code and declarations are the specialty's, custom is
/// the base's.
Style judged_style(const Style& specialty, const Style& base);

}  // namespace entrywise

#pragma once

#include <vector>

#include "knowledge/knowledge.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// What the page suggests and offers: {"fermentables": [{"name", "kind", "aliases", "color", "extract"}],
/// "hops": [{"name", "aliases", "alpha"}], "yeasts": [{"name", "aliases", "attenuation", "low", "high"}],
/// "styles": [{"guide", "code", "name"}], "sections": [{"section", "title", "points"}]}. Amounts are as a
/// recipe file writes them.
Json shelf_json(const Knowledge& knowledge, const std::vector<Style>& styles);

}  // namespace entrywise

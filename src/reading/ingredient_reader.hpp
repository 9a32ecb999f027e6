#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/node.hpp"
#include "recipe/ingredients.hpp"

namespace entrywise {

/// The entries of an ingredient file, whose format line is `entrywise/fermentables/1`, `entrywise/hops/1` or
/// `entrywise/yeast/1`. A name or alias that stands for two entries of one file is a fault.
Outcome<std::vector<Fermentable>> read_fermentables(const Node& document, const std::string& file);
Outcome<std::vector<Hop>> read_hops(const Node& document, const std::string& file);
Outcome<std::vector<YeastClass>> read_yeasts(const Node& document, const std::string& file);

/// One entry of such a file.
Outcome<Fermentable> read_fermentable(const Node& entry, const std::string& file);
Outcome<Hop> read_hop(const Node& entry, const std::string& file);
Outcome<YeastClass> read_yeast(const Node& entry, const std::string& file);

}  // namespace entrywise

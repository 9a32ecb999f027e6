#pragma once

#include <optional>
#include <string>

#include "quantity/estimate.hpp"
#include "style/attribute.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What is sensed of an attribute on its scale, over the levels that a style accepts: these as a band, hollow
/// where the guide takes them for granted; the beer as a line that holds eight in ten with a mark at the
/// middle. `out` says that the beer is out of style there.
std::string level_picture(Attribute attribute, const std::optional<Expectation>& accepted,
                          const Interval80<double>& level, bool out);

/// The highest level of an attribute's scale.
double top_of(SensoryScale scale);

}  // namespace entrywise

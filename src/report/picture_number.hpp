#pragma once

#include <optional>
#include <string>
#include <vector>

#include "report/beer_numbers.hpp"

namespace entrywise {

/// A number of a beer as the distribution of its draws over the range of a style: what lies inside is drawn
/// solid, what lies outside hollow, the middle as a line.
std::string number_picture(const BeerNumber& number, const std::vector<double>& draws,
                           const std::optional<PlainRange>& range);

/// A number before and after a change, over the range of a style: a hollow mark before, a solid one after.
std::string change_picture(const BeerNumber& before, const BeerNumber& after,
                           const std::optional<PlainRange>& range);

}  // namespace entrywise

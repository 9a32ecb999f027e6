#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// One number of a beer as reports print it: in its unit, with so many decimals.
struct BeerNumber {
    std::string_view key;   ///< as the machine formats name it
    std::string_view name;  ///< as text names it
    std::string_view unit;  ///< `SG`, `% vol`, `IBU`, `SRM`, `vol`, `°P` or `%`
    int decimals = 0;
    Interval80<double> value{};
};

/// A range of a style in the unit of the number; open where an end is missing.
struct PlainRange {
    std::optional<double> low;
    std::optional<double> high;
    bool below_high = false;
};

/// Every number of the beer: the five that guides print ranges of, in their order, then carbonation, real
/// extract and apparent attenuation.
std::vector<BeerNumber> numbers_of(const Beer& beer);

/// The one of `numbers_of` that a guide's number is.
BeerNumber number_of(const Beer& beer, Number number);

/// The draws of it, in its unit.
std::vector<double> draws_of(const Beer& beer, Number number);

/// The range that a style prints of a number; none where it prints none.
std::optional<PlainRange> range_of(const StyleRanges& ranges, Number number);

/// Above or below, decided on the value as printed; empty where the middle of the estimate is inside.
std::string_view side_of(const BeerNumber& number, const PlainRange& range);

/// The five numbers that guides print ranges of, in their order.
const std::vector<Number>& guide_numbers();

}  // namespace entrywise

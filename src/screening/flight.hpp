#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"
#include "screening/screened.hpp"

namespace entrywise {

/// The entries of one category, or of one table of a competition.
struct Flight {
    StyleName category;  ///< of variants the style that is entered; at a table, of the first entry
    std::string title;
    std::optional<CompetitionTable> table;
    std::vector<std::size_t> order;  ///< places among the entries, from light to strong
    Span<AlcoholByVolume> alcohol;   ///< of the entries' middles
    Span<Bitterness> bitterness;
};

/// Tables first, then the categories, both in the order of their codes, each with its entries in the order to
/// judge them in: the palate should not have to come back from a strong or bitter beer to a light one (common
/// practice), so that they stand by the steps of the palate that alcohol and bitterness make together; equal
/// ones as they came in.
std::vector<Flight> flights_of(const std::vector<Screened>& entries);

/// Whether a category's code stands before another in the order of a guide: `2A` before `10A`.
bool stands_before(const StyleName& first, const StyleName& second);

}  // namespace entrywise

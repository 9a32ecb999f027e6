#pragma once

#include <optional>
#include <vector>

#include "advice/check.hpp"
#include "advice/line_up.hpp"
#include "brewing/deviates.hpp"
#include "recipe/recipe.hpp"
#include "screening/screened.hpp"
#include "style/competition.hpp"
#include "style/style.hpp"

namespace entrywise {

/// An entry as it was read: the recipe with what the form says in it, and the style that it is judged by,
/// none where neither form nor recipe declares any.
struct EntryRead {
    Recipe recipe;
    std::optional<Style> style;
    std::optional<Style> base_style;
    std::optional<Seat> seat;  ///< in the competition that it is entered in, where one is named
};

/// What came of an entry, with all that a check tells of it where it declares a style.
struct Screening {
    Screened screened;
    std::optional<Check> check;
};

/// Judges an entry by its style, and looks among the styles where it would stand best.
/// The dice are kept from entry to entry; they change nothing of the result.
Screening screen(ClubEntry entry, const EntryRead& read, const LineUp& line_up, Deviates& dice);

/// An entry that cannot be read.
Screened unreadable(ClubEntry entry, std::vector<Fault> faults);

}  // namespace entrywise

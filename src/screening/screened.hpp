#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "advice/caution.hpp"
#include "base/fault.hpp"
#include "judging/sheet.hpp"
#include "quantity/estimate.hpp"
#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"
#include "screening/best_place.hpp"
#include "screening/entry.hpp"
#include "style/competition.hpp"

namespace entrywise {

/// What is to be done about an entry, the first that applies from the end: it cannot be read; the form must
/// say more; it would stand better elsewhere; points or safety are worth a word; nothing. An entry in a style
/// that the competition does not accept must move before its form is looked at.
enum class Status { ready, look, move, incomplete, unreadable };

inline constexpr std::array all_statuses{Status::ready, Status::look, Status::move, Status::incomplete,
                                         Status::unreadable};

/// `ready`, `look`, `move`, `incomplete`, `unreadable`.
std::string_view word_of(Status status);
std::optional<Status> status_named(std::string_view word);

/// The numbers of a beer, each with the interval of eight in ten.
struct BeerFigures {
    Interval80<SpecificGravity> original_gravity;
    Interval80<SpecificGravity> final_gravity;
    Interval80<AlcoholByVolume> alcohol;
    Interval80<Bitterness> bitterness;
    Interval80<Color> color;
    Interval80<Carbonation> carbonation;
};

/// A finding, short.
struct TalkingPoint {
    std::string id;  ///< `flavor.bitterness.above`
    double points = 0.0;
    std::string note;
};

/// What came of an entry, without the draws behind it: a kilobyte or so.
struct Screened {
    ClubEntry entry;                 ///< without its recipe
    std::string beer;                ///< the recipe's name
    std::optional<StyleName> style;  ///< declared, as the variant that it is judged by
    std::string style_title;
    std::optional<Seat> seat;  ///< in the competition that it is entered in, where one is named
    std::optional<BeerFigures> figures;
    std::optional<PointsAtRisk> at_risk;  ///< in the declared style
    std::vector<TalkingPoint> talk;       ///< the dearest findings, at most three
    std::optional<BestPlace> best;
    std::vector<std::string> missing;  ///< what the form must still say: names of declarations, or `category`
    std::string missing_note;          ///< the same as a sentence
    std::vector<std::string> allergens;
    std::vector<Caution> cautions;
    std::uint64_t fingerprint = 0;
    std::string duplicate_of;  ///< number of the first entry of the same recipe
    Status status = Status::unreadable;
    std::vector<Fault> faults;
};

/// Tells of each entry whose recipe an earlier one has which that is.
void mark_duplicates(std::vector<Screened>& entries);

}  // namespace entrywise

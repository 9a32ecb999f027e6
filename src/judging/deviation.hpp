#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/impression.hpp"
#include "judging/yardstick.hpp"
#include "sensing/profile.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// How far, draw by draw, one thing sensed lies outside what the style accepts: in steps, above positive,
/// below negative, zero inside.
struct Deviation {
    Section section = Section::overall;
    std::optional<Attribute> attribute;  ///< none for color, which stands beside the sensed attributes
    std::string_view name;               ///< `flavor.bitterness`
    std::vector<double> steps;           ///< empty or all zero where it is inside in every draw
    bool is_inside = true;               ///< in every draw
    double habit = 0.0;                  ///< what the guide's habit takes off the level
    double accepted_low = 0.0;
    double accepted_high = 0.0;
    double weight = 1.0;  ///< of a miss: less for what the guide only takes for granted
    bool assumed = false;
    bool told_by_number = false;  ///< the number is further out than the word, as at the end of a scale
};

/// The deviation of every attribute that the style describes, and of color where it prints a range.
std::vector<Deviation> deviations_of(const Impression& beer, const Yardstick& yardstick,
                                     const ScoreSheet& score_sheet);

/// The word of what deviates within its section: `bitterness`, `color`.
std::string word_of(const Deviation& deviation);

/// The median level that the deviation is about, on the attribute's scale as the guide uses it (SRM for
/// color).
double level_of(const Deviation& deviation, const Beer& beer, const Profile& profile);

}  // namespace entrywise

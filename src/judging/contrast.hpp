#pragma once

#include <variant>
#include <vector>

#include "judging/sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What styles are told apart by: something sensed, or a number.
using Trait = std::variant<Attribute, Number>;

/// How two styles stand to each other in one trait, in steps of the palate: those of the scale for what is
/// sensed, those of `palate_step.hpp` for numbers.
struct Contrast {
    Trait trait;
    /// How far a beer of the one lies outside the other on average, whichever of the two it is, every
    /// accepted level being as likely; zero where both accept the same.
    double steps = 0.0;
    double gap = 0.0;      ///< steps from the one to the nearest that the other accepts, zero where both meet
    bool meets = true;     ///< whether a beer can be in both
    double overlap = 1.0;  ///< what both accept, as a share of all that either does
    bool second_is_higher = false;
};

/// Every trait that both styles lay down, in the order of the sheet, the numbers last. A word stands for the
/// step around it, half of it to either side. An open end of a range reaches as far as the other style does.
std::vector<Contrast> contrasts_between(const Style& first, const Style& second);

/// Whether a judge can go by this trait alone: beers of the one lie at least a quarter of a step outside the
/// other on average, and both share less than a third of what either accepts (working values). Not by the
/// head, which goes by the pour and the glass as much.
bool sets_apart(const Contrast& contrast);

/// The traits that set two styles apart, most separating first. An original gravity is left out where the
/// alcohol sets apart as well, since that is what is sensed of it; so are words for which a number speaks, or
/// the number where the words say more.
std::vector<Contrast> separating(const std::vector<Contrast>& contrasts);

/// How far apart two styles are as a whole: the mean of the steps over all that both lay down.
double distance_of(const std::vector<Contrast>& contrasts);

}  // namespace entrywise

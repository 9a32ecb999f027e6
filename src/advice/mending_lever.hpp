#pragma once

#include <functional>
#include <string>
#include <vector>

#include "advice/attempt.hpp"
#include "advice/change.hpp"
#include "quantity/measures.hpp"

namespace entrywise {

/// One thing that a brewer can change, with the settings that make sense and what a change to them disturbs.
/// A setting is a number in the unit that it is told in; where a thing is only done or not done there is one
/// setting to try, and nothing to tune.
struct MendingLever {
    std::vector<std::string> touches;  ///< what it sets; no two levers of one proposal set the same
    double now = 0.0;                  ///< the setting as the recipe stands
    double lowest = 0.0;
    double highest = 1.0;
    std::vector<double> trials;                ///< settings worth a first look
    bool tunable = true;                       ///< whether settings between the trials make sense
    bool brings_in_new = false;                ///< wants an ingredient that the recipe does not have
    std::size_t counts_as = 1;                 ///< how many changes it is told as
    double rather_none_below = 0.0;            ///< a rest that is hardly worth weighing
    std::function<double(double)> rounded;     ///< to what is weighed or set
    std::function<double(double)> disruption;  ///< in points at risk that a brewer would bear instead
    std::function<void(Attempt&, double)> apply;
    std::function<std::vector<Change>(const Attempt& mended, double)> told;
};

/// What a change disturbs, in points that one would rather lose than make it: working values. An amount or a
/// setting that the recipe has costs a little and more the further it goes; what has to be bought costs more
/// than what only has to be weighed or set otherwise.
double disruption_of_amount(double from, double to);  ///< by the logarithm of the ratio
double disruption_of_setting(double from, double to, double large_change);
inline constexpr double disruption_of_dropping = 1.0;
inline constexpr double disruption_of_handling = 0.5;  ///< a rest, a filter, a fining: more work, nothing new
inline constexpr double disruption_of_new = 1.6;
inline constexpr double ease_of_unusual = 0.6;  ///< a factor: less of what does not belong is missed less

/// Less of an amount than this part of it is hardly worth keeping (working value).
inline constexpr double hardly_a_rest = 0.15;

/// A few settings spread over a span, both ends among them.
std::vector<double> spread_over(double lowest, double highest, std::size_t count = 5);

/// Settings of an amount that the recipe has: none of it, parts and multiples, as far as they are allowed.
std::vector<double> around_amount(double now, double lowest, double highest);

/// Rounding to a whole number of steps.
std::function<double(double)> to_steps_of(double step);

/// Rounding of grams to what is weighed, of degrees Celsius to what is set, and of liters to what is measured
/// out, in a recipe's own units.
std::function<double(double)> to_weighable_grams(const Measures& measures);
std::function<double(double)> to_settable_celsius(const Measures& measures);
std::function<double(double)> to_measurable_liters(const Measures& measures);

}  // namespace entrywise

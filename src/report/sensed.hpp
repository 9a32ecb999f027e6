#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "advice/check.hpp"

namespace entrywise {

/// A thing sensed that is worth telling, at the level at which the guide words it.
struct SensedTrait {
    Attribute attribute;
    Interval80<double> level;
    std::string_view side;      ///< `above` or `below` where a finding says so, else empty
    bool only_perhaps = false;  ///< the level itself is likely inside, though a finding is told
};

/// What is sensed of a section, in the order of the attributes. What the style does not want and the beer
/// does not have, and what the recipe leaves open, is no part of it.
std::vector<SensedTrait> sensed_in(const Check& check, Section section);

/// What the style does not want and the beer does not have, in all and of one section: `smoke and sour`,
/// `smoke or sour`; empty if that is nothing.
std::string rightly_absent(const Check& check);
std::string rightly_absent(const Check& check, Section section);

}  // namespace entrywise

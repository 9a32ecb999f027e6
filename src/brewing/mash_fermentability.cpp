#include "brewing/mash_fermentability.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/piecewise.hpp"

namespace entrywise {

namespace {

/// Points of attenuation against an infusion at 65 °C, by degrees Celsius. Working value, see the header.
constexpr std::array<Corner, 8> by_mash_temperature = {{{55.0, -3.0},
                                                        {62.0, -1.0},
                                                        {65.0, 0.0},
                                                        {67.0, -2.0},
                                                        {68.0, -4.0},
                                                        {70.0, -8.0},
                                                        {75.0, -30.0},
                                                        {80.0, -50.0}}};

/// Points of attenuation that a short mash leaves, by minutes. Working value.
constexpr std::array<Corner, 5> by_time = {
    {{0.0, -20.0}, {10.0, -8.0}, {20.0, -4.0}, {30.0, -2.0}, {60.0, 0.0}}};

/// Points that a rest for each of the two amylases gains. Working value.
constexpr double gain_of_two_rests = 2.0;

/// Half-life of beta-amylase: 10 min at 65 °C (Muller 1991), halved by every 3 degrees more (working value).
double enzyme_half_life(double degrees) {
    return 10.0 * std::exp2((65.0 - degrees) / 3.0);
}

bool converts(const MashRest& rest) {
    return in_celsius(rest.temperature) >= 55.0 && rest.time > 0.0 * minute;
}

bool is_between(const MashRest& rest, double low, double high) {
    const double degrees = in_celsius(rest.temperature);
    return degrees >= low && degrees <= high;
}

/// A rest of the second kind adds to what the first made, so that its own temperature does not count against
/// it.
bool has_two_rests(std::span<const MashRest> rests) {
    const auto first = std::find_if(rests.begin(), rests.end(), [](const MashRest& rest) {
        return is_between(rest, 60.0, 64.0) && rest.time >= 20.0 * minute;
    });
    return first != rests.end() && std::any_of(first + 1, rests.end(), [](const MashRest& rest) {
               return is_between(rest, 68.0, 74.0) && rest.time >= 10.0 * minute;
           });
}

/// The mean of the rests' temperatures, each weighted by the beta-amylase that is used up in it.
double mean_temperature(std::span<const MashRest> rests, bool only_first_of_two) {
    double enzyme = 1.0;
    double used = 0.0;
    double sum = 0.0;
    for (const MashRest& rest : rests) {
        const double degrees = in_celsius(rest.temperature);
        if (!converts(rest) || (only_first_of_two && degrees > 64.0)) {
            continue;
        }
        const double left = enzyme * std::exp2(-in(rest.time, minute) / enzyme_half_life(degrees));
        sum += (enzyme - left) * degrees;
        used += enzyme - left;
        enzyme = left;
    }
    return sum / used;
}

}  // namespace

MashEffect mash_effect(std::span<const MashRest> rests) {
    constexpr Attenuation point = 0.01 * fully_attenuated;
    if (std::none_of(rests.begin(), rests.end(), converts)) {
        return {0.0 * point, 8.0 * point};
    }
    double minutes = 0.0;
    for (const MashRest& rest : rests) {
        minutes += converts(rest) ? in(rest.time, minute) : 0.0;
    }
    const bool two_rests = has_two_rests(rests);
    const double degrees = mean_temperature(rests, two_rests);
    const double shift = on_line_through(by_mash_temperature, degrees) + on_line_through(by_time, minutes) +
                         (two_rests ? gain_of_two_rests : 0.0);
    return {shift * point, (degrees > 70.0 ? 8.0 : 4.0) * point};
}

}  // namespace entrywise

#include "advice/mending_lever.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace entrywise {

double disruption_of_amount(double from, double to) {
    constexpr double least = 0.4;
    constexpr double per_doubling = 0.35;
    if (to <= 0.0 || from <= 0.0) {
        return disruption_of_dropping;
    }
    return std::min(least + per_doubling * std::abs(std::log2(to / from)), disruption_of_dropping + 0.4);
}

double disruption_of_setting(double from, double to, double large_change) {
    constexpr double least = 0.4;
    constexpr double of_large_change = 0.6;
    return least + of_large_change * std::abs(to - from) / large_change;
}

std::vector<double> spread_over(double lowest, double highest, std::size_t count) {
    std::vector<double> settings;
    for (std::size_t step = 0; step < count; ++step) {
        const double part = static_cast<double>(step) / static_cast<double>(count - 1);
        settings.push_back(lowest + part * (highest - lowest));
    }
    return settings;
}

std::vector<double> around_amount(double now, double lowest, double highest) {
    constexpr std::array<double, 4> multiples{0.0, 0.5, 1.5, 2.5};
    std::vector<double> settings;
    for (const double multiple : multiples) {
        const double setting = std::clamp(multiple * now, lowest, highest);
        if (setting != now && std::find(settings.begin(), settings.end(), setting) == settings.end()) {
            settings.push_back(setting);
        }
    }
    return settings;
}

std::function<double(double)> to_steps_of(double step) {
    return [step](double setting) { return std::round(setting / step) * step; };
}

std::function<double(double)> to_weighable_grams(const Measures& measures) {
    return [measures](double grams) { return in(weighable(grams * gram, measures), gram); };
}

std::function<double(double)> to_settable_celsius(const Measures& measures) {
    return [measures](double degrees) { return in_celsius(settable(celsius(degrees), measures)); };
}

std::function<double(double)> to_measurable_liters(const Measures& measures) {
    return [measures](double liters) { return in(measurable(liters * liter, measures), liter); };
}

}  // namespace entrywise

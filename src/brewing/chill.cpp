#include "brewing/chill.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "brewing/kettle_bitterness.hpp"

namespace entrywise {

namespace {

Isomerization chilled(const HotSchedule& schedule, Duration time_to_cool) {
    HotSide chill = hot_side(schedule, time_to_cool);
    const auto stands = static_cast<std::ptrdiff_t>(schedule.stands.size());
    chill.after_boil.erase(chill.after_boil.begin(), chill.after_boil.begin() + stands);
    return HotSideKinetics(chill).after_boil();
}

/// A plain combination, component by component.
Isomerization combined(const Isomerization& first, double factor, const Isomerization& second) {
    return {first.alpha_left + factor * second.alpha_left, first.alpha_to_iso + factor * second.alpha_to_iso,
            first.iso_left + factor * second.iso_left};
}

}  // namespace

Chill::Chill(const HotSchedule& schedule) {
    constexpr std::size_t nodes = 6;
    const double low = in(shortest, minute);
    const double high = in(longest, minute);
    for (std::size_t node = 0; node < nodes; ++node) {
        const double angle = std::numbers::pi * (static_cast<double>(node) + 0.5) / nodes;
        at_.push_back(0.5 * (low + high) - 0.5 * (high - low) * std::cos(angle));
        divided_difference_.push_back(chilled(schedule, at_.back() * minute));
    }
    for (std::size_t order = 1; order < nodes; ++order) {
        for (std::size_t node = nodes - 1; node >= order; --node) {
            const Isomerization rise =
                combined(divided_difference_[node], -1.0, divided_difference_[node - 1]);
            divided_difference_[node] =
                combined({0.0, 0.0, 0.0}, 1.0 / (at_[node] - at_[node - order]), rise);
        }
    }
}

Chill::Chill(const HotSchedule& schedule, Duration only_time) {
    const Duration time = std::clamp(only_time, shortest, longest);
    at_.push_back(in(time, minute));
    divided_difference_.push_back(chilled(schedule, time));
}

Isomerization Chill::over(Duration time_to_cool) const {
    const double minutes = in(std::clamp(time_to_cool, shortest, longest), minute);
    Isomerization result = divided_difference_.back();
    for (std::size_t node = at_.size() - 1; node-- > 0;) {
        result = combined(divided_difference_[node], minutes - at_[node], result);
    }
    return result;
}

}  // namespace entrywise

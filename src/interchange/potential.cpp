#include "interchange/potential.hpp"

#include <fmt/format.h>

#include <variant>

#include "base/number.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {
constexpr double sucrose_points = 0.0462;
constexpr double least_in_points = 900.0;
constexpr double thousandths = 1e-3;
}  // namespace

bool is_in_points(std::string_view gravity) {
    const auto number = number_from(gravity);
    return number && *number >= least_in_points;
}

std::optional<std::string> extract_of_potential(std::string_view gravity) {
    const std::string written =
        is_in_points(gravity) ? shortest(*number_from(gravity) * thousandths) : std::string(gravity);
    const auto read = quantity_from<SpecificGravity>(written);
    const auto* const potential = std::get_if<SpecificGravity>(&read);
    if (potential == nullptr || in(*potential, specific_gravity) < 1.0) {
        return std::nullopt;
    }
    const double share = (in(*potential, specific_gravity) - 1.0) / sucrose_points;
    constexpr int decimals = 2;  // of a percent, as far as a potential of four decimals tells
    return fmt::format("{} %", shortest(rounded(100.0 * share, decimals)));
}

}  // namespace entrywise

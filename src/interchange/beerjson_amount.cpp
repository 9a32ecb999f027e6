#include "interchange/beerjson_amount.hpp"

#include <array>
#include <cmath>
#include <cstdint>
#include <string>

namespace entrywise {

BeerJson beerjson_amount(double number, std::string_view unit) {
    BeerJson json;
    json["unit"] = std::string(unit);
    json["value"] = number;
    return json;
}

BeerJson whole_time(Duration duration) {
    struct TimeUnit {
        std::string_view unit;
        Duration one;
    };
    constexpr std::array<TimeUnit, 3> units{{{"day", day}, {"min", minute}, {"sec", second}}};
    constexpr double hairsbreadth = 1e-9;
    for (const auto& [unit, one] : units) {
        const double count = in(duration, one);
        const double nearest = std::round(count);
        const bool is_whole = std::abs(count - nearest) <= hairsbreadth * std::max(1.0, nearest);
        if ((is_whole && nearest >= 1.0) || one == second) {
            BeerJson json;
            json["unit"] = std::string(unit);
            json["value"] = static_cast<std::int64_t>(nearest);
            return json;
        }
    }
    return {};
}

}  // namespace entrywise

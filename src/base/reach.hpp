#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>
#include <utility>

namespace entrywise {

/// The least and the greatest of some values, of which there must be one. Four at a time, as each comparison
/// waits for the one before it.
template <class Value>
std::pair<Value, Value> reach_of(std::span<const Value> values) {
    constexpr std::size_t lanes = 4;
    std::array<Value, lanes> low;
    std::array<Value, lanes> high;
    low.fill(values.front());
    high.fill(values.front());
    std::size_t index = 0;
    for (; index + lanes <= values.size(); index += lanes) {
        for (std::size_t lane = 0; lane < lanes; ++lane) {
            const Value& value = values[index + lane];
            low[lane] = value < low[lane] ? value : low[lane];
            high[lane] = value > high[lane] ? value : high[lane];
        }
    }
    for (; index < values.size(); ++index) {
        low[0] = std::min(low[0], values[index]);
        high[0] = std::max(high[0], values[index]);
    }
    return {*std::min_element(low.begin(), low.end()), *std::max_element(high.begin(), high.end())};
}

}  // namespace entrywise

#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "brewing/beer.hpp"

namespace entrywise {

/// One line of the recipe and the part of a whole that comes from it, as draws.
template <class Value>
struct Part {
    std::string ingredient;
    Position position;
    Estimate<Value> amount;
};

/// The sum of the parts, draw by draw. `draws` says how many there are when there are no parts at all.
template <class Value>
Estimate<Value> sum_of(const std::vector<Part<Value>>& parts, std::size_t draws) {
    std::vector<Value> sums(draws, Value());
    for (const Part<Value>& part : parts) {
        for (std::size_t draw = 0; draw < draws; ++draw) {
            sums[draw] += part.amount[draw];
        }
    }
    return Estimate<Value>(std::move(sums));
}

template <class Value>
Value mean_of(const Estimate<Value>& estimate) {
    Value sum = Value();
    for (const Value& draw : estimate.draws()) {
        sum += draw;
    }
    return sum / static_cast<double>(estimate.count());
}

/// Each part's share of what is brought in, largest first, by means: those of the parts add up to that of the
/// sum, as medians do not. Parts that bring nothing are left out, as are those that take away, such as dry
/// hops in very bitter beer.
template <class Value>
std::vector<SourceShare> shares_of(const std::vector<Part<Value>>& parts) {
    Value whole = Value();
    std::vector<Value> means;
    for (const Part<Value>& part : parts) {
        means.push_back(mean_of(part.amount));
        whole += std::max(means.back(), Value());
    }
    std::vector<SourceShare> shares;
    for (std::size_t index = 0; index < parts.size() && whole > Value(); ++index) {
        if (means[index] > Value()) {
            shares.push_back({parts[index].ingredient, parts[index].position, means[index] / whole});
        }
    }
    std::stable_sort(shares.begin(), shares.end(), [](const SourceShare& first, const SourceShare& second) {
        return first.share > second.share;
    });
    return shares;
}

template <class Value>
Traced<Value> traced(const std::vector<Part<Value>>& parts, std::size_t draws) {
    return {sum_of(parts, draws), shares_of(parts)};
}

}  // namespace entrywise

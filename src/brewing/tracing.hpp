#pragma once

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

/// Each part's share of the sum, by medians, largest first; parts of nothing are left out.
template <class Value>
std::vector<SourceShare> shares_of(const std::vector<Part<Value>>& parts) {
    Value whole = Value();
    std::vector<Value> medians;
    for (const Part<Value>& part : parts) {
        medians.push_back(part.amount.median());
        whole += medians.back();
    }
    std::vector<SourceShare> shares;
    for (std::size_t index = 0; index < parts.size() && whole > Value(); ++index) {
        if (medians[index] > Value()) {
            shares.push_back({parts[index].ingredient, parts[index].position, medians[index] / whole});
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

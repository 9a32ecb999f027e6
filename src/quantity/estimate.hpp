#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <utility>
#include <vector>

#include "quantity/quantities.hpp"

namespace entrywise {

/// How many draws stand for an uncertain value. A power of two, as quasi-random sequences of base two want it.
inline constexpr std::size_t draw_count = 512;

/// The middle of an estimate and the ends between which eight in ten of its draws lie.
template <class Value>
struct Interval80 {
    Value median;
    Value low;
    Value high;
};

/// An uncertain value as `draw_count` draws. Draws of the same index belong together in every estimate of one
/// beer, so that dependence between values is kept: a function of estimates is the function of their draws.
template <class Value>
class Estimate {
  public:
    Estimate() = default;
    explicit Estimate(Value same_for_all) : draws_(draw_count, same_for_all) {}
    explicit Estimate(std::vector<Value> draws) : draws_(std::move(draws)) {}

    const std::vector<Value>& draws() const { return draws_; }
    const Value& operator[](std::size_t index) const { return draws_[index]; }

    /// Median, 10th and 90th percentile of the draws, each a value that was drawn.
    Interval80<Value> interval() const {
        std::vector<Value> sorted = draws_;
        std::sort(sorted.begin(), sorted.end());
        return {sorted[draw_count / 2], sorted[draw_count / 10], sorted[draw_count - 1 - draw_count / 10]};
    }

    Value median() const {
        std::vector<Value> partly_sorted = draws_;
        const auto middle = partly_sorted.begin() + draw_count / 2;
        std::nth_element(partly_sorted.begin(), middle, partly_sorted.end());
        return *middle;
    }

    /// The share of draws that a condition holds for: the chance of it.
    template <class Condition>
    double chance(Condition condition) const {
        const auto holding = std::count_if(draws_.begin(), draws_.end(), condition);
        return static_cast<double>(holding) / static_cast<double>(draw_count);
    }

  private:
    std::vector<Value> draws_;
};

/// The function applied draw by draw: a formula over values becomes one over estimates.
template <class Function, class... Values>
auto lift(Function function, const Estimate<Values>&... estimates) {
    using Result = std::decay_t<std::invoke_result_t<Function&, const Values&...>>;
    std::vector<Result> draws;
    draws.reserve(draw_count);
    for (std::size_t index = 0; index < draw_count; ++index) {
        draws.push_back(std::invoke(function, estimates[index]...));
    }
    return Estimate<Result>(std::move(draws));
}

}  // namespace entrywise

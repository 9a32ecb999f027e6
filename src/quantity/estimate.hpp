#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <type_traits>
#include <utility>
#include <vector>

#include "base/values_at_ranks.hpp"

namespace entrywise {

/// The middle of an estimate and the ends between which eight in ten of its draws lie.
template <class Value>
struct Interval80 {
    Value median;
    Value low;
    Value high;
};

/// An uncertain value as a list of draws, at least one. Draws of the same index belong together in every
/// estimate of one beer, so that dependence between values is kept: a function of estimates is the function
/// of their draws. All estimates of one beer have the same count of draws.
template <class Value>
class Estimate {
  public:
    Estimate() = default;
    explicit Estimate(std::vector<Value> draws) : draws_(std::move(draws)) {}

    const std::vector<Value>& draws() const { return draws_; }
    std::size_t count() const { return draws_.size(); }
    const Value& operator[](std::size_t index) const { return draws_[index]; }

    /// Median, 10th and 90th percentile of the draws, each a value that was drawn.
    Interval80<Value> interval() const {
        const std::size_t tenth = count() / 10;
        const auto [low, median, high] = at_ranks<3>({tenth, count() / 2, count() - 1 - tenth});
        return {median, low, high};
    }

    Value median() const { return at_ranks<1>({count() / 2}).front(); }

    /// The share of draws that a condition holds for: the chance of it.
    template <class Condition>
    double chance(Condition condition) const {
        const auto holding = std::count_if(draws_.begin(), draws_.end(), condition);
        return static_cast<double>(holding) / static_cast<double>(count());
    }

  private:
    template <std::size_t ranks>
    std::array<Value, ranks> at_ranks(const std::array<std::size_t, ranks>& asked) const {
        if constexpr (std::is_same_v<Value, double>) {
            return values_at_ranks(draws_, asked);
        } else {
            std::vector<double> numbers(count());
            std::transform(draws_.begin(), draws_.end(), numbers.begin(),
                           [](const Value& draw) { return draw.value(); });
            const std::array<double, ranks> found = values_at_ranks(numbers, asked);
            std::array<Value, ranks> values;
            std::transform(found.begin(), found.end(), values.begin(),
                           [](double number) { return Value::from_value(number); });
            return values;
        }
    }

    std::vector<Value> draws_;
};

/// The function applied draw by draw: a formula over values becomes one over estimates of equal count.
template <class Function, class First, class... Rest>
auto lift(Function function, const Estimate<First>& first, const Estimate<Rest>&... rest) {
    using Result = std::decay_t<std::invoke_result_t<Function&, const First&, const Rest&...>>;
    std::vector<Result> draws(first.count());
    for (std::size_t index = 0; index < draws.size(); ++index) {
        draws[index] = std::invoke(function, first[index], rest[index]...);
    }
    return Estimate<Result>(std::move(draws));
}

}  // namespace entrywise

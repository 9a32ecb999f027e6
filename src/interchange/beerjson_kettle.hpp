#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "interchange/beerjson_amount.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The time that is boiled where the recipe leaves it out and the standard asks for it: common practice.
inline constexpr Duration usual_boil = 60.0 * minute;

/// The steps of the kettle that additions refer to, counted from one.
class KettleSteps {
  public:
    explicit KettleSteps(const Recipe& recipe);

    /// Zero where nothing goes in before the boil.
    int first_wort() const { return first_wort_; }

    /// The step of a stand like this, which is a new one where there is none yet.
    int whirlpool(const std::optional<Temperature>& temperature, const std::optional<Duration>& time);

    bool more_than_a_boil() const { return steps_.size() > 1; }
    const std::vector<BeerJson>& all() const { return steps_; }

  private:
    std::vector<BeerJson> steps_;
    int first_wort_ = 0;
    std::size_t before_whirlpools_ = 0;
};

}  // namespace entrywise

#include "interchange/beerjson_kettle.hpp"

#include <algorithm>

namespace entrywise {

KettleSteps::KettleSteps(const Recipe& recipe) {
    const bool has_first_wort =
        std::any_of(recipe.hops.begin(), recipe.hops.end(),
                    [](const HopAddition& hop) { return hop.use == HopUse::first_wort; });
    if (has_first_wort) {
        BeerJson step;
        step["name"] = "first wort";
        steps_.push_back(step);
        first_wort_ = static_cast<int>(steps_.size());
    }
    BeerJson boil;
    boil["name"] = "boil";
    boil["step_time"] = whole_time(recipe.boil.time.value_or(usual_boil));
    steps_.push_back(boil);
    before_whirlpools_ = steps_.size();
}

int KettleSteps::whirlpool(const std::optional<Temperature>& temperature,
                           const std::optional<Duration>& time) {
    BeerJson step;
    step["name"] = "whirlpool";
    if (temperature) {
        step["start_temperature"] = beerjson_amount(*temperature, exchange_temperature_units());
        step["end_temperature"] = step["start_temperature"];
    }
    if (time) {
        step["step_time"] = whole_time(*time);
    }
    const auto found =
        std::find(steps_.begin() + static_cast<std::ptrdiff_t>(before_whirlpools_), steps_.end(), step);
    if (found != steps_.end()) {
        return static_cast<int>(found - steps_.begin()) + 1;
    }
    steps_.push_back(step);
    return static_cast<int>(steps_.size());
}

}  // namespace entrywise

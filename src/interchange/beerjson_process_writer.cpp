#include "interchange/beerjson_process_writer.hpp"

#include <optional>
#include <string>

namespace entrywise {

namespace {

BeerJson step_of(const std::string& name, const std::optional<Temperature>& temperature,
                 const std::optional<Duration>& time) {
    BeerJson step;
    step["name"] = name;
    if (temperature) {
        step["start_temperature"] = beerjson_amount(*temperature, exchange_temperature_units());
        step["end_temperature"] = step["start_temperature"];
    }
    if (time) {
        step["step_time"] = whole_time(*time);
    }
    return step;
}

}  // namespace

BeerJson beerjson_mash(const Recipe& recipe) {
    constexpr double room_temperature = 20.0;  // of the grain, which the standard asks for
    BeerJson mash;
    mash["name"] = "mash";
    mash["grain_temperature"] = beerjson_amount(room_temperature, "C");
    mash["mash_steps"] = BeerJson::array();
    for (const MashRest& rest : recipe.mash) {
        BeerJson step;
        step["name"] = to_text(rest.temperature);
        step["type"] = &rest == &recipe.mash.front() ? "infusion" : "temperature";
        step["step_temperature"] = beerjson_amount(rest.temperature, exchange_temperature_units());
        step["step_time"] = whole_time(rest.time);
        mash["mash_steps"].push_back(step);
    }
    return mash;
}

BeerJson beerjson_fermentation(const Recipe& recipe) {
    BeerJson steps = BeerJson::array();
    steps.push_back(step_of("fermentation", recipe.fermentation_temperature, recipe.fermentation_time));
    if (recipe.diacetyl_rest) {
        steps.push_back(
            step_of("diacetyl rest", recipe.diacetyl_rest->temperature, recipe.diacetyl_rest->time));
    }
    const Conditioning& conditioning = recipe.conditioning;
    if (conditioning.temperature || conditioning.time) {
        steps.push_back(step_of("conditioning", conditioning.temperature, conditioning.time));
    }
    BeerJson fermentation;
    fermentation["name"] = "fermentation";
    fermentation["fermentation_steps"] = steps;
    return fermentation;
}

}  // namespace entrywise

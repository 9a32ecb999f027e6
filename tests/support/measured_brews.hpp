#pragma once

#include <fmt/format.h>

#include <array>
#include <string>

#include "brewing/bitterness_of_utilization.hpp"
#include "brewing/kettle_bitterness.hpp"
#include "brewing/utilization_garetz.hpp"
#include "brewing/utilization_rager.hpp"
#include "brewing/utilization_tinseth.hpp"
#include "tests/published/kettle_bitterness.hpp"

namespace entrywise::testing {

// What the chain and the classical formulas make of the brews whose bitterness was measured.

inline Concentration alpha_acids_of(const published::MeasuredBrew& brew) {
    return brew.grams * gram * (brew.alpha_percent / 100.0) / (brew.liters * liter);
}

inline bool was_boiled(const published::MeasuredBrew& brew) {
    return brew.celsius >= 100.0;
}

inline std::string in_words(const published::MeasuredBrew& brew) {
    return fmt::format("{:.0f} min at {:.1f} °C, {:.0f} mg/L alpha acids", brew.minutes, brew.celsius,
                       in(alpha_acids_of(brew), milligram_per_liter));
}

/// By the chain, with the quick chill known.
inline double predicted_ibu(const published::MeasuredBrew& brew) {
    const bool boiled = was_boiled(brew);
    HotSide hot_side{celsius(100.0), {}};
    if (!boiled) {
        hot_side.after_boil.push_back({brew.minutes * minute, celsius(brew.celsius)});
    }
    const std::array doses = {
        KettleDose{alpha_acids_of(brew), HopForm::whole, (boiled ? brew.minutes : 0.0) * minute, 0}};
    const Bitterness hops = kettle_bitterness(doses, HotSideKinetics(hot_side)).hops;
    return (hops + malt_bitterness(brew.original_gravity * specific_gravity)).value();
}

// The classical formulas know no temperature: to them a steep is a boil.

inline double tinseth_ibu(const published::MeasuredBrew& brew) {
    const Share utilization =
        tinseth_utilization(brew.minutes * minute, brew.original_gravity * specific_gravity);
    return bitterness_of_utilization(alpha_acids_of(brew), utilization).value();
}

inline double rager_ibu(const published::MeasuredBrew& brew) {
    const Share utilization =
        rager_utilization(brew.minutes * minute, brew.original_gravity * specific_gravity);
    return bitterness_of_utilization(alpha_acids_of(brew), utilization).value();
}

inline double garetz_ibu(const published::MeasuredBrew& brew) {
    return garetz_bitterness(alpha_acids_of(brew), brew.minutes * minute,
                             {.boil_gravity = brew.original_gravity * specific_gravity})
        .value();
}

}  // namespace entrywise::testing

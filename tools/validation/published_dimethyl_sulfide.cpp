#include <fmt/format.h>

#include <array>

#include "brewing/dimethyl_sulfide.hpp"
#include "tests/published/dimethyl_sulfide.hpp"
#include "tools/validation/published_quantities.hpp"

namespace entrywise {

using namespace entrywise::published;

namespace {

Comparison half_life(const PrecursorHalfLife& row) {
    return {fmt::format("pH {:.1f} and {:.0f} °C", row.ph, row.celsius),
            row.minutes,
            in(precursor_half_life(row.ph, celsius(row.celsius)), minute),
            {}};
}

}  // namespace

Quantity half_life_of_precursor() {
    Quantity quantity{"Half-life of the precursor of dimethyl sulfide",
                      "min",
                      1,
                      Evidence::measured_seen,
                      precursor_breakdown,
                      {}};
    for (const PrecursorHalfLife& row : precursor_at_the_boil) {
        quantity.values.push_back(half_life(row));
    }
    quantity.values.push_back(half_life(precursor_below_the_boil));
    return quantity;
}

Quantity share_of_precursor() {
    const Concentration precursor = 0.2 * milligram_per_liter;
    const std::array stand = {TemperatureStep{30.0 * minute, celsius(94.0)}};
    return {"Precursor of dimethyl sulfide under heat",
            "share",
            3,
            Evidence::own_formula,
            precursor_breakdown,
            {{"left by an hour's boil, pH 5.2",
              precursor_left_by_the_boil,
              precursor_left(60.0 * minute, 5.2, celsius(100.0)).value(),
              {}},
             {"freed by 30 min at 94 °C",
              precursor_freed_by_a_stand,
              dimethyl_sulfide_formed(precursor, stand, 5.2) / precursor,
              {}}}};
}

Quantity precursor_by_others() {
    return {"Half-life of the precursor of dimethyl sulfide, others",
            "min",
            1,
            Evidence::measured,
            precursor_breakdown_again,
            {half_life(precursor_by_wilson)}};
}

}  // namespace entrywise

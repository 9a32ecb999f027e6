#include <fmt/format.h>

#include "brewing/carbonation.hpp"
#include "tests/published/carbonation.hpp"
#include "tools/validation/published_quantities.hpp"

namespace entrywise {

using namespace entrywise::published;

Quantity carbonation_in_kegs() {
    Quantity quantity{"Carbonation in a keg", "volumes", 2, Evidence::printed, carbonation_chart, {}};
    for (const KegCarbonation& row : keg_carbonations) {
        const Temperature temperature = celsius((row.fahrenheit - 32.0) / 1.8);
        quantity.values.push_back(
            {fmt::format("{:.0f} psi at {:.0f} °F", row.psi, row.fahrenheit),
             row.volumes,
             carbonation_at_equilibrium(row.psi * pound_per_square_inch, temperature).value(),
             {}});
    }
    return quantity;
}

Quantity carbonation_left() {
    Quantity quantity{
        "Carbonation that fermentation leaves", "volumes", 2, Evidence::printed, priming_tables, {}};
    for (const ResidualCarbonation& row : residual_carbonations) {
        quantity.values.push_back({fmt::format("{:.0f} °C", row.celsius),
                                   row.volumes,
                                   residual_carbonation(celsius(row.celsius)).value(),
                                   {}});
    }
    return quantity;
}

}  // namespace entrywise

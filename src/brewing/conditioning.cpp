#include "brewing/conditioning.hpp"

#include <algorithm>
#include <cmath>

#include "brewing/dimethyl_sulfide.hpp"
#include "brewing/tracing.hpp"

namespace entrywise {

namespace {

constexpr double cold_below_celsius = 8.0;
constexpr double wort_ph = 5.4;

/// Lager malt holds 3 to 9 mg of precursor a kilogram (typical maltsters' analyses, from memory), told as the
/// dimethyl sulfide that it can become. A rolling boil drives off nearly all that it frees; a fifth of what
/// is left of the precursor turns in the hot wort after the boil, where hardly any is driven off;
/// fermentation strips half of all (working values).
constexpr double precursor_per_kilogram_of_malt_milligram = 6.0;
constexpr double stays_after_boil = 0.02;
constexpr double freed_after_boil = 0.2;
constexpr double stays_after_fermentation = 0.5;

/// Flavor threshold of dimethyl sulfide in beer (Meilgaard, Journal of Agricultural and Food Chemistry 30,
/// 1982, by way of later reviews: 0.03 to 0.05 mg/L).
constexpr Concentration dms_threshold = 0.04 * milligram_per_liter;

double weeks_cold(const Conditioning& conditioning) {
    const bool cold = conditioning.temperature && in_celsius(*conditioning.temperature) <= cold_below_celsius;
    return cold && conditioning.time ? in(*conditioning.time, week) : 0.0;
}

Traced<Concentration> dose_of(ExtraKind kind, const Process& process, const Wort& wort, std::size_t draws) {
    std::vector<Part<Concentration>> parts;
    for (const ExtraAddition& extra : process.extras) {
        if (extra.kind == kind && extra.mass) {
            const Mass mass = *extra.mass;
            const auto dose = [mass](Volume volume) -> Concentration { return mass / volume; };
            parts.push_back({extra.name, extra.position, lift(dose, wort.volume)});
        }
    }
    return traced(parts, draws);
}

bool has_extra(const Process& process, std::initializer_list<ExtraKind> kinds) {
    return std::any_of(process.extras.begin(), process.extras.end(), [&](const ExtraAddition& extra) {
        return std::find(kinds.begin(), kinds.end(), extra.kind) != kinds.end();
    });
}

/// Dimethyl sulfide in multiples of its threshold: what the boil leaves of the precursor becomes it in the
/// hot wort.
Estimate<double> dimethyl_sulfide(const Process& process, const Drivers& drivers, Deviates& deviates) {
    const double left = in(precursor_left(process.boil_time, wort_ph, celsius(100.0)), whole);
    const std::vector<double>& lot = deviates.of("precursor of dimethyl sulfide");
    std::vector<double> thresholds;
    thresholds.reserve(deviates.draws());
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        // Malt lots differ by a factor of about one and a half (half width of eight in ten).
        const double lot_factor = std::exp(0.3 * lot[draw]);
        const Concentration precursor =
            precursor_per_kilogram_of_malt_milligram * 1e-6 * lot_factor * drivers.dms_precursor.total[draw];
        const Concentration in_beer = stays_after_fermentation *
                                      (freed_after_boil * left + stays_after_boil * (1.0 - left)) * precursor;
        thresholds.push_back(in(in_beer, dms_threshold));
    }
    return Estimate<double>(std::move(thresholds));
}

}  // namespace

void conditioning(const Recipe& recipe, const Process& process, const Wort& wort, Deviates& deviates,
                  Drivers& drivers) {
    drivers.cold_weeks = weeks_cold(recipe.conditioning);
    drivers.filtered = recipe.conditioning.filtered.value_or(false);
    drivers.nitrogen = recipe.conditioning.nitrogen.value_or(false);
    drivers.fined = has_extra(process, {ExtraKind::fining});
    drivers.fruit_or_wood =
        has_extra(process, {ExtraKind::fruit, ExtraKind::wood, ExtraKind::tea, ExtraKind::coffee,
                            ExtraKind::cocoa, ExtraKind::nut, ExtraKind::other});
    drivers.spice = dose_of(ExtraKind::spice, process, wort, deviates.draws());
    drivers.salt = dose_of(ExtraKind::salt, process, wort, deviates.draws());
    drivers.dms = dimethyl_sulfide(process, drivers, deviates);
    const YeastClass& yeast = process.yeasts.front().yeast;
    drivers.flocculation = yeast.flocculation;
    drivers.haze_positive = yeast.haze_positive;
}

}  // namespace entrywise

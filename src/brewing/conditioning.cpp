#include "brewing/conditioning.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "brewing/dimethyl_sulfide.hpp"
#include "brewing/hot_side.hpp"
#include "brewing/seasoning.hpp"

namespace entrywise {

namespace {

constexpr double cold_below_celsius = 8.0;
constexpr double wort_ph = 5.4;

/// Lager malt holds 3 to 9 mg of precursor a kilogram (typical maltsters' analyses, from memory), told as the
/// dimethyl sulfide that it can become. Fermentation strips half of what the wort holds (working value).
constexpr double precursor_per_kilogram_of_malt_milligram = 6.0;
constexpr double stays_after_fermentation = 0.5;

/// Flavor threshold of dimethyl sulfide in beer (Meilgaard, Journal of Agricultural and Food Chemistry 30,
/// 1982, by way of later reviews: 0.03 to 0.05 mg/L).
constexpr Concentration dms_threshold = 0.04 * milligram_per_liter;

bool has_extra(const Process& process, std::initializer_list<ExtraKind> kinds) {
    return std::any_of(process.extras.begin(), process.extras.end(), [&](const ExtraAddition& extra) {
        return std::find(kinds.begin(), kinds.end(), extra.kind) != kinds.end();
    });
}

/// The part of the precursor left by the boil that turns into dimethyl sulfide afterwards: a stand of the
/// hops and the chill, and the minutes until they begin.
double freed_after_boil(const Process& process) {
    constexpr Duration until_chilled = 5.0 * minute;
    const HotSide side = hot_side(hot_schedule(process), process.hot_after_boil.middle);
    std::vector<TemperatureStep> steps = side.after_boil;
    steps.push_back({until_chilled, side.boiling});
    const Concentration precursor = 1.0 * milligram_per_liter;
    return in(dimethyl_sulfide_formed(precursor, steps, wort_ph), precursor);
}

/// What a boil leaves in the wort of the dimethyl sulfide that it frees: all of it under a lid, next to
/// nothing where a twelfth of the wort boils off in an hour (8 %, common practice of the trade).
double stays_after_boil(const Process& process) {
    constexpr double stays_in_rolling_boil = 0.02;
    constexpr double rolling_per_hour = 0.08;
    const double evaporated_in_hour = process.evaporation.middle * hour / process.volume.middle;
    return std::pow(stays_in_rolling_boil, std::min(evaporated_in_hour / rolling_per_hour, 1.0));
}

/// Dimethyl sulfide in multiples of its threshold: what the boil leaves of the precursor becomes it in the
/// hot wort.
Estimate<double> dimethyl_sulfide(const Process& process, const Drivers& drivers, Deviates& deviates) {
    const double left = in(precursor_left(process.boil_time, wort_ph, celsius(100.0)), whole);
    const double in_wort = freed_after_boil(process) * left + stays_after_boil(process) * (1.0 - left);
    const std::vector<double>& lot = deviates.of("precursor of dimethyl sulfide");
    std::vector<double> thresholds;
    thresholds.reserve(deviates.draws());
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        // Malt lots differ by a factor of about one and a half (half width of eight in ten).
        const double lot_factor = std::exp(0.3 * lot[draw]);
        const Concentration precursor =
            precursor_per_kilogram_of_malt_milligram * 1e-6 * lot_factor * drivers.dms_precursor.total[draw];
        thresholds.push_back(in(stays_after_fermentation * in_wort * precursor, dms_threshold));
    }
    return Estimate<double>(std::move(thresholds));
}

}  // namespace

double weeks_cold(const Conditioning& conditioning) {
    const bool cold = conditioning.temperature && in_celsius(*conditioning.temperature) <= cold_below_celsius;
    return cold && conditioning.time ? in(*conditioning.time, week) : 0.0;
}

void conditioning(const Process& process, const Wort& wort, Deviates& deviates, Drivers& drivers) {
    drivers.cold_weeks = weeks_cold(process.conditioning);
    drivers.filtered = process.conditioning.filtered.value_or(false);
    drivers.nitrogen = process.conditioning.nitrogen.value_or(false);
    drivers.fined = has_extra(process, {ExtraKind::fining});
    drivers.fruit_or_wood =
        has_extra(process, {ExtraKind::fruit, ExtraKind::wood, ExtraKind::tea, ExtraKind::coffee,
                            ExtraKind::cocoa, ExtraKind::nut, ExtraKind::other});
    drivers.spice = spice_of(process, wort, deviates);
    drivers.salt = salt_of(process, wort, deviates);
    drivers.dms = dimethyl_sulfide(process, drivers, deviates);
    const YeastClass& yeast = process.yeasts.front().yeast;
    drivers.flocculation = yeast.flocculation;
    drivers.haze_positive = yeast.haze_positive;
}

}  // namespace entrywise

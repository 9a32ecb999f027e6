#include "brewing/acidity.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "base/text.hpp"

namespace entrywise {

namespace {

/// Lactic acid is sold as a syrup of 88 %, 1.2 kg/L (common practice).
constexpr double lactic_acid_in_syrup = 0.88;
constexpr Concentration density_of_syrup = 1200.0 * gram_per_liter;

/// What a pale mash takes up until its pH is right (working value; some 6 mL of syrup in 20 L).
constexpr Concentration taken_by_mash = 0.3 * gram_per_liter;

constexpr Concentration flavor_threshold = 0.4 * gram_per_liter;

bool is_named(const ExtraAddition& extra, std::string_view part) {
    return lowered(extra.name).find(part) != std::string::npos;
}

/// Citric and tartaric acid are weighed dry; anything else that is tasted is taken for lactic acid.
Mass acid_in(const ExtraAddition& extra) {
    if (is_named(extra, "phosphoric")) {
        return 0.0 * gram;
    }
    const bool dry = is_named(extra, "citric") || is_named(extra, "tartaric") || is_named(extra, "malic");
    const Mass mass = extra.mass.value_or(extra.volume.value_or(0.0 * liter) * density_of_syrup);
    return (dry ? 1.0 : lactic_acid_in_syrup) * mass;
}

}  // namespace

double sourness_of_acid(Concentration lactic_acid) {
    constexpr double strongest = 7.0;
    const double thresholds = in(lactic_acid, flavor_threshold);
    return std::min(thresholds < 1.0 ? std::max(thresholds, 0.0) : 1.0 + std::log2(thresholds), strongest);
}

Estimate<Concentration> added_acid(const Process& process, const Wort& wort) {
    Mass into_the_mash = 0.0 * gram;
    Mass later = 0.0 * gram;
    for (const ExtraAddition& extra : process.extras) {
        if (extra.kind == ExtraKind::acid) {
            (extra.use == ExtraUse::mash ? into_the_mash : later) += acid_in(extra);
        }
    }
    const auto tasted = [&](Volume volume) -> Concentration {
        return std::max<Concentration>(into_the_mash / volume - taken_by_mash, Concentration()) +
               later / volume;
    };
    return lift(tasted, wort.volume);
}

}  // namespace entrywise

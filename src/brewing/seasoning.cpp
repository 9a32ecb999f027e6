#include "brewing/seasoning.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "base/piecewise.hpp"
#include "base/text.hpp"
#include "brewing/tracing.hpp"

namespace entrywise {

namespace {

struct Potency {
    std::string_view part_of_name;
    double beside_coriander;
};

constexpr std::array<Potency, 15> potencies{{
    {"clove", 4.0},
    {"cinnamon", 4.0},
    {"cassia", 4.0},
    {"nutmeg", 4.0},
    {"mace", 4.0},
    {"allspice", 4.0},
    {"anise", 4.0},
    {"cardamom", 4.0},
    {"chili", 4.0},
    {"saffron", 4.0},
    {"vanilla", 2.0},
    {"pepper", 2.0},
    {"ginger", 1.5},
    {"peel", 0.67},
    {"zest", 0.67},
}};

constexpr Duration usual_boil_of_spice = 10.0 * minute;

/// Tinctures and other liquids are taken to weigh what water does.
constexpr Concentration density_of_liquid = 1000.0 * gram_per_liter;

bool holds(const std::string& name, std::initializer_list<std::string_view> parts) {
    return std::any_of(parts.begin(), parts.end(),
                       [&](std::string_view part) { return name.find(part) != std::string::npos; });
}

/// How much of an addition there is in a liter of wort.
Estimate<Concentration> dose_of(const ExtraAddition& extra, const Wort& wort, Deviates& deviates) {
    if (lacks_a_dose(extra)) {
        return deviates.draw("dose of " + extra.name, usual_dose(extra), Concentration(),
                             1000.0 * gram_per_liter);
    }
    const Mass mass = extra.mass ? *extra.mass : *extra.volume * density_of_liquid;
    return lift([mass](Volume volume) -> Concentration { return mass / volume; }, wort.volume);
}

Part<Concentration> part_of(const ExtraAddition& extra, double counts, const Wort& wort, Deviates& deviates) {
    const auto counted = [counts](Concentration dose) -> Concentration { return counts * dose; };
    return {extra.name, extra.position, lift(counted, dose_of(extra, wort, deviates))};
}

}  // namespace

double spice_potency(std::string_view name) {
    const std::string known = lowered(name);
    const auto found = std::find_if(potencies.begin(), potencies.end(), [&](const Potency& potency) {
        return known.find(potency.part_of_name) != std::string::npos;
    });
    return found == potencies.end() ? 1.0 : found->beside_coriander;
}

Share spice_left(ExtraUse use, Duration boil) {
    constexpr double left_from_mash = 0.3;
    constexpr std::array<Corner, 3> left_by_minutes{{{15.0, 1.0}, {60.0, 0.5}, {90.0, 0.35}}};
    switch (use) {
        case ExtraUse::mash:
            return left_from_mash * whole;
        case ExtraUse::boil:
            return on_line_through(left_by_minutes, in(boil, minute)) * whole;
        default:
            return whole;
    }
}

bool tastes_salty(std::string_view name) {
    const std::string known = lowered(name);
    const bool only_hardens_water = holds(known, {"epsom", "burton", "brewing salt", "water salt", "gypsum",
                                                  "calcium", "magnesium", "potassium"});
    return !only_hardens_water && holds(known, {"salt", "sodium chloride", "nacl", "fleur de sel"});
}

Uncertain<Concentration> usual_dose(const ExtraAddition& extra) {
    constexpr Uncertain<Concentration> salt{0.75 * gram_per_liter, 0.35 * gram_per_liter};
    constexpr Uncertain<Concentration> coriander{0.5 * gram_per_liter, 0.25 * gram_per_liter};
    if (extra.kind == ExtraKind::salt) {
        return Uncertain<Concentration>(salt);
    }
    const double potency = spice_potency(extra.name);
    return {coriander.middle / potency, coriander.half_width / potency};
}

bool lacks_a_dose(const ExtraAddition& extra) {
    const bool tasted =
        extra.kind == ExtraKind::spice || (extra.kind == ExtraKind::salt && tastes_salty(extra.name));
    return tasted && !extra.mass && !extra.volume;
}

Traced<Concentration> spice_of(const Process& process, const Wort& wort, Deviates& deviates) {
    std::vector<Part<Concentration>> parts;
    for (const ExtraAddition& extra : process.extras) {
        if (extra.kind == ExtraKind::spice) {
            const Share left = spice_left(extra.use, extra.time.value_or(usual_boil_of_spice));
            parts.push_back(part_of(extra, spice_potency(extra.name) * in(left, whole), wort, deviates));
        }
    }
    return traced(parts, deviates.draws());
}

Traced<Concentration> salt_of(const Process& process, const Wort& wort, Deviates& deviates) {
    std::vector<Part<Concentration>> parts;
    for (const ExtraAddition& extra : process.extras) {
        if (extra.kind == ExtraKind::salt && tastes_salty(extra.name)) {
            parts.push_back(part_of(extra, 1.0, wort, deviates));
        }
    }
    return traced(parts, deviates.draws());
}

}  // namespace entrywise

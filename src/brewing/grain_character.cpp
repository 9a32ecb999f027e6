#include "brewing/grain_character.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "brewing/tracing.hpp"

namespace entrywise {

namespace {

constexpr double efficiency_of_the_doses = 0.72;

/// Grams of an addition per liter of beer, as much as they count.
Estimate<Concentration> effective_dose(const GristAddition& addition, const Process& process,
                                       const Wort& wort) {
    const bool mashed =
        needs_a_mash(addition.fermentable.kind) && process.mashed && addition.use == GristUse::mash;
    const auto dose = [&](Volume volume, Share efficiency) -> Concentration {
        const double counts = mashed ? in(efficiency, whole) / efficiency_of_the_doses : 1.0;
        return counts * addition.mass / volume;
    };
    return lift(dose, wort.volume, wort.efficiency);
}

class GrainParts {
  public:
    GrainParts(const Process& process, const Wort& wort, std::size_t draws)
        : process_(process), draws_(draws) {
        for (const GristAddition& addition : process.grist) {
            doses_.push_back(effective_dose(addition, process, wort));
        }
    }

    Traced<Concentration> of(double Contribution::*strength) const {
        std::vector<Part<Concentration>> parts;
        for (std::size_t index = 0; index < doses_.size(); ++index) {
            const GristAddition& addition = process_.grist[index];
            const double relative = addition.fermentable.gives.*strength;
            if (relative > 0.0) {
                const auto scaled = [relative](Concentration dose) { return relative * dose; };
                parts.push_back({addition.fermentable.name, addition.position, lift(scaled, doses_[index])});
            }
        }
        return traced(parts, draws_);
    }

  private:
    const Process& process_;
    std::size_t draws_;
    std::vector<Estimate<Concentration>> doses_;
};

bool belongs_to(const Fermentable& fermentable, std::initializer_list<std::string_view> groups) {
    return std::any_of(groups.begin(), groups.end(), [&](std::string_view group) {
        return std::find(fermentable.groups.begin(), fermentable.groups.end(), group) !=
               fermentable.groups.end();
    });
}

/// Extract that brings neither protein nor flavor of malt, over all extract.
double adjunct_share(const Process& process, const Wort& wort) {
    Mass adjuncts = 0.0 * kilogram;
    Mass all = 0.0 * kilogram;
    for (std::size_t index = 0; index < wort.extract.size(); ++index) {
        const Mass extract = wort.extract[index].amount.median();
        all += extract;
        if (belongs_to(process.grist[index].fermentable, {"sugar", "corn", "rice", "honey", "corn syrup"})) {
            adjuncts += extract;
        }
    }
    return all > 0.0 * kilogram ? in(adjuncts, all) : 0.0;
}

/// Brettanomyces breaks down in time what makes a wort thick (common practice of brewers of lambic, whose
/// ropy beer it thins).
bool takes_body_of_grain(const Process& process) {
    return std::any_of(process.yeasts.begin(), process.yeasts.end(),
                       [](const YeastAddition& addition) { return addition.yeast.brettanomyces; });
}

double wheat_like_share(const Process& process) {
    Mass wheat_like = 0.0 * kilogram;
    Mass all = 0.0 * kilogram;
    for (const GristAddition& addition : process.grist) {
        all += addition.mass;
        if (belongs_to(addition.fermentable, {"wheat", "rye", "oats", "spelt"})) {
            wheat_like += addition.mass;
        }
    }
    return all > 0.0 * kilogram ? in(wheat_like, all) : 0.0;
}

}  // namespace

void grain_character(const Process& process, const Wort& wort, std::size_t draws, Drivers& drivers) {
    const GrainParts grain(process, wort, draws);
    drivers.malt = grain.of(&Contribution::malt);
    drivers.toast = grain.of(&Contribution::toast);
    drivers.caramel = grain.of(&Contribution::caramel);
    drivers.roast = grain.of(&Contribution::roast);
    drivers.smoke = grain.of(&Contribution::smoke);
    drivers.acid = grain.of(&Contribution::acid);
    drivers.grain_body = takes_body_of_grain(process) ? traced(std::vector<Part<Concentration>>{}, draws)
                                                      : grain.of(&Contribution::body);
    drivers.grain_head = grain.of(&Contribution::head);
    drivers.grain_haze = grain.of(&Contribution::haze);
    drivers.dms_precursor = grain.of(&Contribution::dms);
    drivers.lactose = grain.of(&Contribution::sweet);
    drivers.adjunct_share = adjunct_share(process, wort);
    drivers.wheat_like_share = wheat_like_share(process);
}

}  // namespace entrywise

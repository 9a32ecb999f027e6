#include "advice/measured_before.hpp"

#include <cmath>

#include "brewing/brew.hpp"
#include "brewing/deviates.hpp"

namespace entrywise {

namespace {

// What instruments tell apart: a hydrometer, two of its readings, a laboratory's method, a color card, a
// gauge (common practice).
constexpr SpecificGravity gravity_told = 0.0005 * specific_gravity;
constexpr AlcoholByVolume alcohol_told = 0.1 * percent_by_volume;
constexpr Bitterness bitterness_told = 1.0 * ibu;
constexpr Color color_told = 0.3 * srm;
constexpr Carbonation carbonation_told = 0.05 * volume_of_co2;

Beer unmeasured(Recipe recipe) {
    recipe.measured = Measured();
    Deviates middle(1);
    return brew(recipe, middle);
}

template <class Quantity>
void drop_if_moved(std::optional<Uncertain<Quantity>>& measured, Quantity before, Quantity after,
                   Quantity told, const char* name, std::vector<std::string>& dropped) {
    const double moved = std::abs((after - before).value());
    if (measured && moved > told.value()) {
        measured.reset();
        dropped.emplace_back(name);
    }
}

bool any(const Measured& measured) {
    return measured.original_gravity || measured.final_gravity || measured.bitterness || measured.color ||
           measured.alcohol || measured.carbonation;
}

}  // namespace

std::vector<std::string> drop_untrue_measurements(const Recipe& before, Recipe& changed) {
    std::vector<std::string> dropped;
    if (before.measured.carbonation && !changed.measured.carbonation) {
        dropped.emplace_back("carbonation");
    }
    if (!any(changed.measured)) {
        return dropped;
    }
    const Beer was = unmeasured(before);
    const Beer is = unmeasured(changed);
    Measured& measured = changed.measured;
    drop_if_moved(measured.original_gravity, was.original_gravity.total.median(),
                  is.original_gravity.total.median(), gravity_told, "original gravity", dropped);
    drop_if_moved(measured.final_gravity, was.final_gravity.median(), is.final_gravity.median(), gravity_told,
                  "final gravity", dropped);
    drop_if_moved(measured.alcohol, was.alcohol.median(), is.alcohol.median(), alcohol_told, "alcohol",
                  dropped);
    drop_if_moved(measured.bitterness, was.bitterness.total.median(), is.bitterness.total.median(),
                  bitterness_told, "bitterness", dropped);
    drop_if_moved(measured.color, was.color.total.median(), is.color.total.median(), color_told, "color",
                  dropped);
    drop_if_moved(measured.carbonation, was.carbonation.median(), is.carbonation.median(), carbonation_told,
                  "carbonation", dropped);
    return dropped;
}

void move_measured_bitterness(const Recipe& before, Recipe& changed) {
    if (!changed.measured.bitterness || before.hops.size() == changed.hops.size()) {
        return;
    }
    const Bitterness was = unmeasured(before).bitterness.total.median();
    const Bitterness is = unmeasured(changed).bitterness.total.median();
    Bitterness& middle = changed.measured.bitterness->middle;
    middle = std::max(middle + (is - was), 0.0 * ibu);
}

}  // namespace entrywise

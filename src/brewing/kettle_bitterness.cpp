#include "brewing/kettle_bitterness.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace entrywise {

namespace {

bool boils(const KettleDose& dose) {
    return dose.boil > 0.0 * minute;
}

/// Rises as the brew goes on; equal for doses of one moment.
auto moment(const KettleDose& dose) {
    return std::tuple(-dose.boil, boils(dose) ? std::size_t{0} : dose.joins_at_step);
}

/// Indices of the doses as the brew goes on. Doses of one moment stand by their amount, so that sums come out
/// the same to the last bit however the doses were given.
std::vector<std::size_t> in_order_of_brewing(std::span<const KettleDose> doses) {
    std::vector<std::size_t> order(doses.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [doses](std::size_t left, std::size_t right) {
        const auto key = [](const KettleDose& dose) {
            return std::tuple(moment(dose), dose.alpha_acids, dose.form);
        };
        return key(doses[left]) < key(doses[right]);
    });
    return order;
}

double other_absorbers(HopForm form, const KettleModel& model) {
    switch (form) {
        case HopForm::whole:
            return model.other_absorbers_of_whole_hops;
        case HopForm::extract:
            return model.other_absorbers_of_extract;
        case HopForm::pellet:
            break;
    }
    return model.other_absorbers_of_pellets;
}

DoseBitterness bitterness_of_dose(const KettleDose& dose, double dissolved, const HotSideKinetics& kinetics,
                                  const KettleModel& model) {
    const Concentration iso_alpha_acids = dissolved * kinetics.from(dose).alpha_to_iso * dose.alpha_acids;
    const Bitterness of_others =
        other_absorbers(dose.form, model) * in(dose.alpha_acids, milligram_per_liter) * ibu;
    return {iso_alpha_acids,
            bitterness_of_iso_alpha_acids(model.survival.value() * iso_alpha_acids) + of_others, of_others};
}

}  // namespace

HotSideKinetics::HotSideKinetics(const HotSide& hot_side)
    : boiling_(isomerization_rates(hot_side.boiling)), from_step_(hot_side.after_boil.size() + 1) {
    step_.reserve(hot_side.after_boil.size());
    for (const TemperatureStep& step : hot_side.after_boil) {
        step_.push_back(isomerization(step.time, isomerization_rates(step.temperature)));
    }
    for (std::size_t index = step_.size(); index-- > 0;) {
        from_step_[index] = step_[index].then(from_step_[index + 1]);
    }
}

Isomerization HotSideKinetics::from(const KettleDose& dose) const {
    if (boils(dose)) {
        return isomerization(dose.boil, boiling_).then(from_step_.front());
    }
    return from_step_[std::min(dose.joins_at_step, steps())];
}

double HotSideKinetics::alpha_left_between(const KettleDose& earlier, const KettleDose& later) const {
    double left = std::exp(-((earlier.boil - later.boil) * boiling_.isomerization));
    if (!boils(later)) {
        const std::size_t end = std::min(later.joins_at_step, steps());
        for (std::size_t step = boils(earlier) ? 0 : earlier.joins_at_step; step < end; ++step) {
            left *= step_[step].alpha_left;
        }
    }
    return left;
}

Bitterness malt_bitterness(SpecificGravity original_gravity) {
    return 25.0 * (original_gravity.value() - 1.0) * ibu;
}

Bitterness bitterness_of_iso_alpha_acids(Concentration iso_alpha_acids) {
    return 51.2 / 69.68 * in(iso_alpha_acids, milligram_per_liter) * ibu;
}

KettleBitterness kettle_bitterness(std::span<const KettleDose> doses, const HotSideKinetics& kinetics,
                                   const KettleModel& model) {
    KettleBitterness result{std::vector<DoseBitterness>(doses.size()), {}, {}, {}};
    const std::vector<std::size_t> order = in_order_of_brewing(doses);
    Concentration in_solution;
    for (auto first = order.begin(); first != order.end();) {
        const auto end = std::find_if(first, order.end(), [doses, first](std::size_t index) {
            return moment(doses[index]) != moment(doses[*first]);
        });
        const Concentration added = std::accumulate(
            first, end, Concentration(),
            [doses](Concentration sum, std::size_t index) { return sum + doses[index].alpha_acids; });
        if (first != order.begin()) {
            in_solution *= kinetics.alpha_left_between(doses[*(first - 1)], doses[*first]);
        }
        const Concentration room = std::max(Concentration(), model.solubility - in_solution);
        const double dissolved = added > room ? in(room, added) : 1.0;
        in_solution += dissolved * added;
        for (; first != end; ++first) {
            const DoseBitterness dose = bitterness_of_dose(doses[*first], dissolved, kinetics, model);
            result.doses[*first] = dose;
            result.hops += dose.contribution;
            result.of_others += dose.of_others;
            result.iso_alpha_acids_in_beer += model.survival.value() * dose.iso_alpha_acids;
        }
    }
    return result;
}

}  // namespace entrywise

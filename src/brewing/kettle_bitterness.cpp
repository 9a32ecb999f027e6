#include "brewing/kettle_bitterness.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>
#include <utility>

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

}  // namespace

HotSideKinetics::HotSideKinetics(const HotSide& hot_side)
    : boiling_(isomerization_rates(hot_side.boiling)), from_step_(hot_side.after_boil.size() + 1) {
    step_.reserve(hot_side.after_boil.size());
    for (const TemperatureStep& step : hot_side.after_boil) {
        step_.push_back(isomerization(step.time, isomerization_rates(step.temperature)));
    }
    follow_with(Isomerization());
}

void HotSideKinetics::follow_with(const Isomerization& afterwards) {
    from_step_.back() = afterwards;
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

KettleHops::KettleHops(std::vector<KettleDose> doses, const HotSideKinetics& kinetics)
    : doses_(std::move(doses)), order_(in_order_of_brewing(doses_)) {
    boiled_.reserve(doses_.size());
    for (const KettleDose& dose : doses_) {
        boiled_.push_back(isomerization(dose.boil, kinetics.boiling()));
    }
    for (std::size_t place = 0; place < order_.size(); ++place) {
        const KettleDose& earlier = doses_[order_[place == 0 ? 0 : place - 1]];
        alpha_left_.push_back(kinetics.alpha_left_between(earlier, doses_[order_[place]]));
    }
    result_.doses.resize(doses_.size());
}

const KettleBitterness& KettleHops::bitterness(const HotSideKinetics& kinetics, const KettleModel& model) {
    result_.hops = result_.of_others = 0.0 * ibu;
    result_.iso_alpha_acids_in_beer = Concentration();
    Concentration in_solution;
    for (std::size_t first = 0; first < order_.size();) {
        std::size_t end = first;
        Concentration added;
        for (; end < order_.size() && moment(doses_[order_[end]]) == moment(doses_[order_[first]]); ++end) {
            added += doses_[order_[end]].alpha_acids;
        }
        in_solution *= alpha_left_[first];
        const Concentration room = std::max(Concentration(), model.solubility - in_solution);
        const double dissolved = added > room ? in(room, added) : 1.0;
        in_solution += dissolved * added;
        for (; first < end; ++first) {
            add(order_[first], dissolved, kinetics, model);
        }
    }
    return result_;
}

void KettleHops::add(std::size_t dose, double dissolved, const HotSideKinetics& kinetics,
                     const KettleModel& model) {
    const KettleDose& given = doses_[dose];
    const Isomerization from_here =
        boils(given) ? boiled_[dose].then(kinetics.after_boil()) : kinetics.from(given);
    const Concentration iso_alpha_acids = dissolved * from_here.alpha_to_iso * given.alpha_acids;
    const Concentration in_beer = model.survival.value() * iso_alpha_acids;
    const Bitterness of_others =
        other_absorbers(given.form, model) * in(given.alpha_acids, milligram_per_liter) * ibu;
    const Bitterness contribution = bitterness_of_iso_alpha_acids(in_beer) + of_others;
    result_.doses[dose] = {iso_alpha_acids, contribution, of_others};
    result_.hops += contribution;
    result_.of_others += of_others;
    result_.iso_alpha_acids_in_beer += in_beer;
}

KettleBitterness kettle_bitterness(std::span<const KettleDose> doses, const HotSideKinetics& kinetics,
                                   const KettleModel& model) {
    return KettleHops({doses.begin(), doses.end()}, kinetics).bitterness(kinetics, model);
}

}  // namespace entrywise

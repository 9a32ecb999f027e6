#include "judging/account.hpp"

#include <algorithm>
#include <iterator>
#include <limits>

namespace entrywise {

namespace {

/// What of a distance a cause is charged for.
class ChargedSteps {
  public:
    explicit ChargedSteps(Charged charged)
        : least_(charged == Charged::above ? 0.0 : -farthest),
          most_(charged == Charged::below ? 0.0 : farthest) {}

    double of(double outside) const { return std::min(std::max(outside, least_), most_); }

  private:
    static constexpr double farthest = std::numeric_limits<double>::infinity();

    double least_;
    double most_;
};

}  // namespace

Account::Account(const Tariff& tariff, const std::vector<Deviation>& deviations, std::size_t draws,
                 Noting noting)
    : tariff_(tariff), noting_(noting), charged_(tariff.score_sheet().one_miss.size()), asked_(draws) {
    for (const Deviation& deviation : deviations) {
        deviations_[place_of(deviation)] = &deviation;
    }
    for (const Section section : sheet_sections) {
        left_[section].assign(draws, 1.0);
    }
}

std::span<const Charge> Account::take(std::size_t cause) {
    const std::span<Charge> charges = charges_of(cause);
    find_misses(charges);
    for (const auto miss : misses_) {
        find_parts(miss, charges);
        take_for(miss, tariff_.score_sheet().causes[cause]);
    }
    return charges;
}

std::span<Charge> Account::charges_of(std::size_t cause) {
    const std::vector<std::size_t>& places = tariff_.shown_by(cause);
    const bool is_any_outside = std::any_of(places.begin(), places.end(), [this](std::size_t place) {
        return deviations_[place] != nullptr && !deviations_[place]->is_inside;
    });
    if (!is_any_outside) {
        return {};
    }
    std::size_t count = 0;
    for (const std::size_t place : places) {
        if (deviations_[place] != nullptr) {
            charges_.resize(std::max(charges_.size(), count + 1));
            write_charge(*deviations_[place], tariff_.score_sheet().causes[cause], charges_[count]);
            ++count;
        }
    }
    return std::span(charges_).first(count);
}

void Account::write_charge(const Deviation& deviation, const Cause& cause, Charge& charge) const {
    charge.deviation = &deviation;
    charge.above = {.miss = tariff_.miss_above(place_of(deviation))};
    charge.below = {.miss = tariff_.miss_below(place_of(deviation))};
    charge.points.resize(deviation.is_inside ? 0 : deviation.steps.size());
    const ChargedSteps charged_steps(cause.charged);
    const double weight = cause.weight * deviation.weight;
    bool is_any_above = false;
    bool is_any_below = false;
    for (std::size_t draw = 0; draw < charge.points.size(); ++draw) {
        const double steps = charged_steps.of(deviation.steps[draw]);
        charge.points[draw] = weight * tariff_.cost_of_miss().points(steps);
        is_any_above |= steps > 0.0;
        is_any_below |= steps < 0.0;
    }
    charge.above.is_asked_for = is_any_above;
    charge.below.is_asked_for = is_any_below;
}

double Account::chance_of_notice(const Cause& cause, const Charge& charge, Direction direction) const {
    const ChargedSteps charged_steps(cause.charged);
    const ChargedSteps in_direction(direction == Direction::above ? Charged::above : Charged::below);
    double sum = 0.0;
    for (const double outside : charge.deviation->steps) {
        sum += tariff_.cost_of_miss().chance_of_notice(charged_steps.of(in_direction.of(outside)));
    }
    return sum / static_cast<double>(charge.deviation->steps.size());
}

double Account::most_of(Section section) const {
    return tariff_.score_sheet().at_most[section].value_or(tariff_.score_sheet().points[section]);
}

void Account::take(Section section, double points) {
    const double most = most_of(section);
    for (double& left : left_[section]) {
        left *= 1.0 - std::min(points, most) / most;
    }
}

Estimate<double> Account::at_risk(Section section) const {
    const double most = most_of(section);
    return lift([most](double left) { return most * (1.0 - left); }, Estimate<double>(left_[section]));
}

Estimate<double> Account::at_risk() const {
    std::vector<double> sum(left_[Section::overall].size(), 0.0);
    for (const Section section : sheet_sections) {
        const double most = most_of(section);
        const std::vector<double>& left = left_[section];
        for (std::size_t draw = 0; draw < sum.size(); ++draw) {
            sum[draw] += most * (1.0 - left[draw]);
        }
    }
    return Estimate<double>(std::move(sum));
}

void Account::find_misses(std::span<const Charge> charges) {
    misses_.clear();
    for (const Charge& charge : charges) {
        for (const Tally* const tally : {&charge.above, &charge.below}) {
            if (tally->is_asked_for) {
                misses_.push_back(tally->miss);
            }
        }
    }
    std::sort(misses_.begin(), misses_.end());
    misses_.erase(std::unique(misses_.begin(), misses_.end()), misses_.end());
}

void Account::find_parts(std::optional<std::size_t> miss, std::span<Charge> charges) {
    parts_.clear();
    some_draws_.resize(std::max(some_draws_.size(), charges.size()));
    for (std::size_t index = 0; index < charges.size(); ++index) {
        parts_.push_back({&charges[index], points_in(miss, charges[index], some_draws_[index])});
    }
}

/// The points of a charge in the draws in which it is part of the miss: all of them, none, or those above or
/// below alone, for which there is room in `some_draws`.
std::span<const double> Account::points_in(std::optional<std::size_t> miss, const Charge& charge,
                                           std::vector<double>& some_draws) const {
    const bool is_above = charge.above.is_asked_for && charge.above.miss == miss;
    const bool is_below = charge.below.is_asked_for && charge.below.miss == miss;
    if (!is_above && !is_below) {
        return {};
    }
    if (is_above == charge.above.is_asked_for && is_below == charge.below.is_asked_for) {
        return charge.points;
    }
    some_draws.resize(charge.points.size());
    for (std::size_t draw = 0; draw < some_draws.size(); ++draw) {
        const bool is_part = (charge.deviation->steps[draw] > 0.0) == is_above;
        some_draws[draw] = is_part ? charge.points[draw] : 0.0;
    }
    return some_draws;
}

void Account::take_for(std::optional<std::size_t> miss, const Cause& cause) {
    elsewhere_.assign(asked_.size(), 0.0);
    for (const Section section : sheet_sections) {
        find_counted(section);
        if (cause.shares[section] <= 0.0 || counted_.empty()) {
            continue;
        }
        ask_for(section, cause);
        if (miss) {
            take_what_is_new(section, charged_[*miss][section]);
        } else {
            take_what_is_asked(section);
        }
        if (noting_ == Noting::each_charge) {
            note_what_is_taken();
        }
    }
}

/// Those of the section's own attributes; where the cause shows in none of them, those of all.
void Account::find_counted(Section section) {
    const auto is_own = [section](const Part& part) { return part.charge->deviation->section == section; };
    const bool has_own = std::any_of(parts_.begin(), parts_.end(), is_own);
    counted_.clear();
    std::copy_if(parts_.begin(), parts_.end(), std::back_inserter(counted_),
                 [&](const Part& part) { return !part.points.empty() && (!has_own || is_own(part)); });
}

/// What the dearest charge of each draw asks of the section. Overall impression follows what the cause takes
/// in the other sections, where one of them may be right; a cause that shows in no other section stands on
/// its own.
void Account::ask_for(Section section, const Cause& cause) {
    const std::span<const double> dearest = dearest_points();
    const double most = most_of(section);
    const double limit = std::min(cause.at_most[section].value_or(most), most);
    const double share = cause.shares[section];
    std::vector<double>& asked = asked_;
    if (section == Section::overall && share < 1.0) {
        const double share_of_elsewhere = share / (1.0 - share);
        for (std::size_t draw = 0; draw < asked.size(); ++draw) {
            const double follows = std::min(elsewhere_[draw] * share_of_elsewhere, limit);
            asked[draw] = dearest[draw] > 0.0 ? follows : 0.0;
        }
    } else {
        for (std::size_t draw = 0; draw < asked.size(); ++draw) {
            asked[draw] = std::min(dearest[draw] * share, limit);
        }
    }
}

std::span<const double> Account::dearest_points() {
    if (counted_.size() == 1) {
        return counted_.front().points;
    }
    dearest_.assign(counted_.front().points.begin(), counted_.front().points.end());
    for (const Part& part : std::span(counted_).subspan(1)) {
        for (std::size_t draw = 0; draw < dearest_.size(); ++draw) {
            dearest_[draw] = std::max(dearest_[draw], part.points[draw]);
        }
    }
    return dearest_;
}

void Account::take_what_is_asked(Section section) {
    const double part_of_a_point = 1.0 / most_of(section);
    std::vector<double>& left = left_[section];
    for (std::size_t draw = 0; draw < left.size(); ++draw) {
        left[draw] *= 1.0 - asked_[draw] * part_of_a_point;
        elsewhere_[draw] += asked_[draw];
    }
}

/// Of what is one miss with other findings only what goes beyond the dearest of them so far is taken; what is
/// asked becomes that.
void Account::take_what_is_new(Section section, std::vector<double>& charged) {
    const double part_of_a_point = 1.0 / most_of(section);
    std::vector<double>& left = left_[section];
    charged.resize(left.size(), 0.0);
    for (std::size_t draw = 0; draw < left.size(); ++draw) {
        const double before = charged[draw];
        const double asked = std::max(asked_[draw], before);
        left[draw] *= (1.0 - asked * part_of_a_point) / (1.0 - before * part_of_a_point);
        elsewhere_[draw] += asked_[draw];
        charged[draw] = asked;
        asked_[draw] = asked - before;
    }
}

/// Notes with the dearest charge of each draw what was taken for it.
void Account::note_what_is_taken() {
    if (counted_.size() == 1) {
        note_with(*counted_.front().charge);
        return;
    }
    for (std::size_t draw = 0; draw < asked_.size(); ++draw) {
        if (asked_[draw] > 0.0) {
            const Part& dearest = *std::max_element(
                counted_.begin(), counted_.end(),
                [draw](const Part& one, const Part& other) { return one.points[draw] < other.points[draw]; });
            dearest.charge->tally(dearest.charge->deviation->steps[draw]).points += asked_[draw];
        }
    }
}

/// The same where there is but one charge.
void Account::note_with(Charge& charge) const {
    double above = charge.above.points;
    double below = charge.below.points;
    for (std::size_t draw = 0; draw < asked_.size(); ++draw) {
        const bool is_above = charge.deviation->steps[draw] > 0.0;
        above += is_above ? asked_[draw] : 0.0;
        below += is_above ? 0.0 : asked_[draw];
    }
    charge.above.points = above;
    charge.below.points = below;
}

}  // namespace entrywise

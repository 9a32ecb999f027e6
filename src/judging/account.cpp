#include "judging/account.hpp"

#include <algorithm>
#include <array>

namespace entrywise {

namespace {

double charged_steps(double outside, Charged charged) {
    const bool is_charged = charged == Charged::both || (charged == Charged::above) == (outside > 0.0);
    return is_charged ? outside : 0.0;
}

/// Finds the charges that count in a section: those of its own attributes; where the cause shows in none of
/// them, those of all. What is inside in every draw charges nothing.
void find_counted(Section section, std::vector<Charge>& charges, std::vector<Charge*>& counted) {
    const bool has_own = std::any_of(charges.begin(), charges.end(), [section](const Charge& charge) {
        return charge.deviation->section == section;
    });
    counted.clear();
    for (Charge& charge : charges) {
        if ((!has_own || charge.deviation->section == section) && !charge.deviation->is_inside) {
            counted.push_back(&charge);
        }
    }
}

/// The dearest charge of a draw.
Charge& dearest_of(const std::vector<Charge*>& charges, std::size_t draw) {
    Charge* dearest = charges.front();
    for (std::size_t index = 1; index < charges.size(); ++index) {
        if (charges[index]->points[draw] > dearest->points[draw]) {
            dearest = charges[index];
        }
    }
    return *dearest;
}

/// The misses that what is charged is part of, each once; nothing stands for what is a miss of its own.
std::vector<std::optional<std::size_t>> misses_of(const std::vector<Charge>& charges) {
    std::vector<std::optional<std::size_t>> misses;
    misses.reserve(2 * charges.size());
    for (const Charge& charge : charges) {
        for (const Tally* const tally : {&charge.above, &charge.below}) {
            if (tally->is_asked_for) {
                misses.push_back(tally->miss);
            }
        }
    }
    std::sort(misses.begin(), misses.end());
    misses.erase(std::unique(misses.begin(), misses.end()), misses.end());
    return misses;
}

/// What of the charges is part of a miss, draw by draw; what was noted of them so far stays.
std::vector<Charge> part_of(const std::vector<Charge>& charges, std::optional<std::size_t> miss) {
    std::vector<Charge> part = charges;
    for (Charge& charge : part) {
        for (std::size_t draw = 0; draw < charge.points.size(); ++draw) {
            const bool is_part = charge.tally(charge.deviation->steps[draw]).miss == miss;
            charge.points[draw] = is_part ? charge.points[draw] : 0.0;
        }
    }
    return part;
}

void note(const std::vector<Charge*>& charges, const std::vector<double>& taken) {
    for (std::size_t draw = 0; draw < taken.size(); ++draw) {
        if (taken[draw] > 0.0) {
            Charge& dearest = dearest_of(charges, draw);
            dearest.tally(dearest.deviation->steps[draw]).points += taken[draw];
        }
    }
}

}  // namespace

Account::Account(const Tariff& tariff, const std::vector<Deviation>& deviations, std::size_t draws,
                 Noting noting)
    : tariff_(tariff), noting_(noting), asked_(draws), charged_(tariff.score_sheet().one_miss.size()) {
    for (const Deviation& deviation : deviations) {
        deviations_[place_of(deviation)] = &deviation;
    }
    for (const Section section : sheet_sections) {
        left_[section].assign(draws, 1.0);
    }
}

std::vector<Charge> Account::charges_of(std::size_t cause) const {
    const std::vector<std::size_t>& places = tariff_.shown_by(cause);
    std::vector<Charge> charges;
    charges.reserve(places.size());
    for (const std::size_t place : places) {
        if (deviations_[place] != nullptr) {
            charges.push_back(charge_of(*deviations_[place], tariff_.score_sheet().causes[cause]));
        }
    }
    return charges;
}

Charge Account::charge_of(const Deviation& deviation, const Cause& cause) const {
    Charge charge;
    charge.deviation = &deviation;
    charge.above.miss = tariff_.miss_above(place_of(deviation));
    charge.below.miss = tariff_.miss_below(place_of(deviation));
    if (deviation.is_inside) {
        return charge;
    }
    const double weight = cause.weight * deviation.weight;
    charge.points.resize(deviation.steps.size());
    for (std::size_t draw = 0; draw < deviation.steps.size(); ++draw) {
        const double steps = charged_steps(deviation.steps[draw], cause.charged);
        charge.points[draw] = steps == 0.0 ? 0.0 : weight * tariff_.cost_of_miss().points(steps);
        charge.above.is_asked_for |= steps > 0.0;
        charge.below.is_asked_for |= steps < 0.0;
    }
    return charge;
}

double Account::chance_of_notice(const Cause& cause, const Charge& charge, Direction direction) const {
    const std::vector<double>& steps = charge.deviation->steps;
    double sum = 0.0;
    for (const double outside : steps) {
        const bool is_in_direction = (outside > 0.0) == (direction == Direction::above);
        sum += is_in_direction
                   ? tariff_.cost_of_miss().chance_of_notice(charged_steps(outside, cause.charged))
                   : 0.0;
    }
    return sum / static_cast<double>(steps.size());
}

double Account::most_of(Section section) const {
    return tariff_.score_sheet().at_most[section].value_or(tariff_.score_sheet().points[section]);
}

void Account::take(const Cause& cause, std::vector<Charge>& charges) {
    const auto misses = misses_of(charges);
    if (misses.size() == 1) {
        take_for(misses.front(), cause, charges);
        return;
    }
    for (const auto miss : misses) {
        std::vector<Charge> part = part_of(charges, miss);
        take_for(miss, cause, part);
        for (std::size_t index = 0; index < part.size(); ++index) {
            charges[index].above.points = part[index].above.points;
            charges[index].below.points = part[index].below.points;
        }
    }
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

void Account::take_for(std::optional<std::size_t> miss, const Cause& cause, std::vector<Charge>& charges) {
    elsewhere_.assign(asked_.size(), 0.0);
    for (const Section section : sheet_sections) {
        find_counted(section, charges, counted_);
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
            note(counted_, asked_);
        }
    }
}

/// What the dearest charge of each draw asks of the section.
void Account::ask_for(Section section, const Cause& cause) {
    const double most = most_of(section);
    const double limit = std::min(cause.at_most[section].value_or(most), most);
    const double share = cause.shares[section];
    std::vector<double>& asked = asked_;
    asked = counted_.front()->points;
    for (std::size_t index = 1; index < counted_.size(); ++index) {
        const std::vector<double>& points = counted_[index]->points;
        for (std::size_t draw = 0; draw < asked.size(); ++draw) {
            asked[draw] = std::max(asked[draw], points[draw]);
        }
    }
    // Overall impression follows what the cause takes in the other sections, where one of them may be right;
    // a cause that shows in no other section stands on its own.
    if (section == Section::overall && share < 1.0) {
        const double share_of_elsewhere = share / (1.0 - share);
        for (std::size_t draw = 0; draw < asked.size(); ++draw) {
            asked[draw] = asked[draw] > 0.0 ? std::min(elsewhere_[draw] * share_of_elsewhere, limit) : 0.0;
        }
    } else {
        for (double& points : asked) {
            points = std::min(points * share, limit);
        }
    }
    for (std::size_t draw = 0; draw < asked.size(); ++draw) {
        elsewhere_[draw] += asked[draw];
    }
}

void Account::take_what_is_asked(Section section) {
    const double part_of_a_point = 1.0 / most_of(section);
    std::vector<double>& left = left_[section];
    for (std::size_t draw = 0; draw < left.size(); ++draw) {
        left[draw] *= 1.0 - asked_[draw] * part_of_a_point;
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
        charged[draw] = asked;
        asked_[draw] = asked - before;
    }
}

}  // namespace entrywise

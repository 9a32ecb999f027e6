#include "judging/account.hpp"

#include <algorithm>
#include <array>

namespace entrywise {

namespace {

constexpr std::array<Section, section_count> sections{Section::aroma, Section::appearance, Section::flavor,
                                                      Section::mouthfeel, Section::overall};

double charged_steps(double outside, Charged charged) {
    const bool is_charged = charged == Charged::both || (charged == Charged::above) == (outside > 0.0);
    return is_charged ? outside : 0.0;
}

/// The charges that count in a section: those of its own attributes; where the cause shows in none of them,
/// those of all. What is inside in every draw charges nothing.
std::vector<Charge*> counted_in(Section section, std::vector<Charge>& charges) {
    const bool has_own = std::any_of(charges.begin(), charges.end(), [section](const Charge& charge) {
        return charge.deviation->section == section;
    });
    std::vector<Charge*> counted;
    for (Charge& charge : charges) {
        if ((!has_own || charge.deviation->section == section) && !charge.deviation->is_inside) {
            counted.push_back(&charge);
        }
    }
    return counted;
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

}  // namespace

Account::Account(const Tariff& tariff, std::size_t draws)
    : tariff_(tariff), charged_(tariff.score_sheet().one_miss.size()) {
    for (const Section section : sections) {
        left_[section].assign(draws, 1.0);
    }
}

std::vector<Charge> Account::charges_of(std::size_t cause, const std::vector<Deviation>& deviations) const {
    std::vector<Charge> charges;
    for (const Deviation& deviation : deviations) {
        if (tariff_.cause_of(place_of(deviation)) == cause) {
            charges.push_back(charge_of(deviation, tariff_.score_sheet().causes[cause]));
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
        charge.points[draw] = weight * tariff_.cost_of_miss().points(steps);
    }
    return charge;
}

void Account::count_notice(const Cause& cause, Charge& charge) const {
    for (const double outside : charge.deviation->steps) {
        const double steps = charged_steps(outside, cause.charged);
        charge.tally(steps).noticed += tariff_.cost_of_miss().chance_of_notice(steps);
    }
}

double Account::most_of(Section section) const {
    return tariff_.score_sheet().at_most[section].value_or(tariff_.score_sheet().points[section]);
}

void Account::take(const Cause& cause, std::vector<Charge>& charges) {
    if (std::all_of(charges.begin(), charges.end(),
                    [](const Charge& charge) { return charge.deviation->is_inside; })) {
        return;
    }
    std::vector<double> elsewhere(left_[Section::overall].size(), 0.0);
    for (const Section section : sections) {
        if (cause.shares[section] > 0.0) {
            take_in(section, cause, charges, elsewhere);
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
    for (const Section section : sections) {
        const double most = most_of(section);
        const std::vector<double>& left = left_[section];
        for (std::size_t draw = 0; draw < sum.size(); ++draw) {
            sum[draw] += most * (1.0 - left[draw]);
        }
    }
    return Estimate<double>(std::move(sum));
}

void Account::take_in(Section section, const Cause& cause, std::vector<Charge>& charges,
                      std::vector<double>& elsewhere) {
    const std::vector<Charge*> counted = counted_in(section, charges);
    if (counted.empty()) {
        return;
    }
    std::vector<double>& left = left_[section];
    const double most = most_of(section);
    const double part_of_a_point = 1.0 / most;
    const double limit = std::min(cause.at_most[section].value_or(most), most);
    // Overall impression follows what the cause takes in the other sections, where one of them may be right;
    // a cause that shows in no other section stands on its own.
    const double share = cause.shares[section];
    const bool follows = section == Section::overall && share < 1.0;
    const double share_of_elsewhere = follows ? share / (1.0 - share) : 0.0;
    for (std::size_t draw = 0; draw < left.size(); ++draw) {
        Charge& dearest = dearest_of(counted, draw);
        if (dearest.points[draw] <= 0.0) {
            continue;
        }
        Tally& tally = dearest.tally(dearest.deviation->steps[draw]);
        const double asked = follows ? elsewhere[draw] * share_of_elsewhere : dearest.points[draw] * share;
        const double points = std::min(asked, limit);
        elsewhere[draw] += points;
        if (!tally.miss) {
            left[draw] *= 1.0 - points * part_of_a_point;
            tally.points += points;
        } else if (const double before = charged_before(*tally.miss, section, draw, points);
                   points > before) {
            left[draw] *= (1.0 - points * part_of_a_point) / (1.0 - before * part_of_a_point);
            tally.points += points - before;
        }
    }
}

/// What was charged already for a miss of several findings, and the greater of the two kept for the next.
double Account::charged_before(std::size_t miss, Section section, std::size_t draw, double points) {
    std::vector<double>& charged = charged_[miss][section];
    charged.resize(left_[section].size(), 0.0);
    const double before = charged[draw];
    charged[draw] = std::max(before, points);
    return before;
}

}  // namespace entrywise

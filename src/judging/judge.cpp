#include <algorithm>
#include <array>
#include <string>

#include "judging/deviation.hpp"
#include "judging/notice.hpp"
#include "judging/score_range.hpp"
#include "judging/sheet.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

/// A finding is worth telling from these on (working values): fewer would hide, more would nag.
constexpr double least_notice = 0.15;
constexpr double fewest_points = 0.15;

/// Points and notice of one attribute in one direction, summed over the draws.
struct Tally {
    double noticed = 0.0;
    double points = 0.0;
};

/// What one deviation is expected to cost over all sections, draw by draw, before it is shared out; and what
/// of it was charged in the end.
struct Charge {
    const Deviation* deviation = nullptr;
    std::vector<double> points;
    Tally above;
    Tally below;

    Tally& tally(double steps) { return steps > 0.0 ? above : below; }
};

Charge charge_of(const Deviation& deviation, const Cause& cause, const ScoreSheet& score_sheet) {
    Charge charge;
    charge.deviation = &deviation;
    charge.points.reserve(deviation.steps.size());
    for (const double outside : deviation.steps) {
        const double steps = cause.only_above ? std::max(outside, 0.0) : outside;
        const double noticed = chance_of_notice(steps, score_sheet);
        charge.tally(steps).noticed += noticed;
        charge.points.push_back(noticed * points_for(steps, score_sheet) * cause.weight * deviation.weight);
    }
    return charge;
}

/// The charges of one cause: those of the attributes that show it and that the style describes.
std::vector<Charge> charges_of(const Cause& cause, const std::vector<Deviation>& deviations,
                               const ScoreSheet& score_sheet) {
    std::vector<Charge> charges;
    for (const Deviation& deviation : deviations) {
        const std::string name = std::string(word_of(deviation.section)) + "." + deviation.attribute;
        if (std::find(cause.shown_by.begin(), cause.shown_by.end(), name) != cause.shown_by.end()) {
            charges.push_back(charge_of(deviation, cause, score_sheet));
        }
    }
    return charges;
}

constexpr std::array<Section, section_count> sections{Section::aroma, Section::appearance, Section::flavor,
                                                      Section::mouthfeel, Section::overall};

/// Adds up by section and draw what the causes cost.
class Account {
  public:
    Account(const ScoreSheet& score_sheet, std::size_t draws) : score_sheet_(score_sheet) {
        for (const Section section : sections) {
            left_[section].assign(draws, 1.0);
        }
    }

    /// Charges a cause to its sections, and notes with each charge what of it was taken.
    void take(const Cause& cause, std::vector<Charge>& charges) {
        for (const Section section : sections) {
            if (cause.shares[section] > 0.0) {
                take_in(section, cause.shares[section], charges);
            }
        }
    }

    /// Points at risk in a section. Misses do not add up without limit: each takes its part of what is left.
    Estimate<double> at_risk(Section section) const {
        const double most = score_sheet_.points[section];
        return lift([most](double left) { return most * (1.0 - left); }, Estimate<double>(left_[section]));
    }

  private:
    /// A section is charged with the dearest attribute of its own; where the cause shows in none of the
    /// section's attributes, with the dearest of all.
    void take_in(Section section, double share, std::vector<Charge>& charges) {
        const bool has_own = std::any_of(charges.begin(), charges.end(), [section](const Charge& charge) {
            return charge.deviation->section == section;
        });
        std::vector<double>& left = left_[section];
        const double most = score_sheet_.points[section];
        for (std::size_t draw = 0; draw < left.size(); ++draw) {
            Charge* dearest = nullptr;
            for (Charge& charge : charges) {
                const bool counts = !has_own || charge.deviation->section == section;
                if (counts && (dearest == nullptr || charge.points[draw] > dearest->points[draw])) {
                    dearest = &charge;
                }
            }
            if (dearest == nullptr || dearest->points[draw] == 0.0) {
                continue;
            }
            const double points = std::min(share * dearest->points[draw], most);
            left[draw] *= 1.0 - points / most;
            dearest->tally(dearest->deviation->steps[draw]).points += points;
        }
    }

    const ScoreSheet& score_sheet_;
    BySection<std::vector<double>> left_;
};

PointsAtRisk summary(const Estimate<double>& points) {
    const auto interval = points.interval();
    return {.median = interval.median, .low = interval.low, .high = interval.high};
}

Estimate<double> sum_of(const BySection<Estimate<double>>& points) {
    Estimate<double> sum = points[Section::aroma];
    for (const Section section :
         {Section::appearance, Section::flavor, Section::mouthfeel, Section::overall}) {
        sum = lift([](double first, double second) { return first + second; }, sum, points[section]);
    }
    return sum;
}

void add_finding(const Deviation& deviation, Direction direction, const Tally& tally,
                 std::vector<Finding>& findings) {
    const double draws = static_cast<double>(deviation.steps.size());
    const Finding finding{.section = deviation.section,
                          .attribute = deviation.attribute,
                          .direction = direction,
                          .noticed = tally.noticed / draws,
                          .points = tally.points / draws,
                          .level = deviation.level,
                          .accepted_low = deviation.accepted_low,
                          .accepted_high = deviation.accepted_high,
                          .assumed = deviation.assumed,
                          .told_by_number = deviation.told_by_number};
    if (finding.noticed >= least_notice && finding.points >= fewest_points) {
        findings.push_back(finding);
    }
}

template <class Quantity>
void add_number(std::vector<NumberCheck>& numbers, Number number, const Estimate<Quantity>& estimate,
                const std::optional<Range<Quantity>>& range) {
    if (range) {
        const auto inside = [&](Quantity value) { return range->contains(at_printed_precision(value)); };
        numbers.push_back({number, estimate.chance(inside)});
    }
}

std::vector<NumberCheck> check_numbers(const Beer& beer, const StyleRanges& ranges) {
    std::vector<NumberCheck> numbers;
    add_number(numbers, Number::original_gravity, beer.original_gravity.total, ranges.original_gravity);
    add_number(numbers, Number::final_gravity, beer.final_gravity, ranges.final_gravity);
    add_number(numbers, Number::alcohol, beer.alcohol, ranges.alcohol);
    add_number(numbers, Number::bitterness, beer.bitterness.total, ranges.bitterness);
    add_number(numbers, Number::color, beer.color.total, ranges.color);
    return numbers;
}

}  // namespace

std::string id_of(const Finding& finding) {
    const std::string direction = finding.direction == Direction::above ? "above" : "below";
    return std::string(word_of(finding.section)) + "." + finding.attribute + "." + direction;
}

Sheet judge(const Beer& beer, const Profile& profile, const Style& style, const ScoreSheet& score_sheet) {
    const std::vector<Deviation> deviations = deviations_of(beer, profile, style, score_sheet);
    Account account(score_sheet, beer.alcohol.count());
    Sheet sheet;
    for (const Cause& cause : score_sheet.causes) {
        std::vector<Charge> charges = charges_of(cause, deviations, score_sheet);
        account.take(cause, charges);
        for (const Charge& charge : charges) {
            add_finding(*charge.deviation, Direction::above, charge.above, sheet.findings);
            add_finding(*charge.deviation, Direction::below, charge.below, sheet.findings);
        }
    }
    std::stable_sort(
        sheet.findings.begin(), sheet.findings.end(),
        [](const Finding& first, const Finding& second) { return first.points > second.points; });
    sheet.numbers = check_numbers(beer, style.ranges);
    BySection<Estimate<double>> at_risk;
    for (const Section section : sections) {
        at_risk[section] = account.at_risk(section);
        sheet.at_risk[section] = summary(at_risk[section]);
    }
    sheet.total = summary(sum_of(at_risk));
    sheet.if_otherwise_well_made = score_range(sheet.total, score_sheet);
    for (const Attribute attribute : all_attributes()) {
        sheet.attributes_not_described += style.expected[attribute] ? 0 : 1;
    }
    for (const Attribute attribute : profile.untold) {
        sheet.attributes_untold += style.expected[attribute] ? 1 : 0;
    }
    sheet.attributes_checked =
        static_cast<int>(attribute_count) - sheet.attributes_not_described - sheet.attributes_untold;
    return sheet;
}

}  // namespace entrywise

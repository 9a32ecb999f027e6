#include <algorithm>
#include <array>
#include <string>

#include "judging/account.hpp"
#include "judging/deviation.hpp"
#include "judging/score_range.hpp"
#include "judging/sheet.hpp"
#include "judging/strength.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

/// A finding is worth telling from these on (working values): fewer would hide, more would nag.
constexpr double least_notice = 0.15;
constexpr double fewest_points = 0.15;

void add_finding(const Account& account, const Cause& cause, const Charge& charge, Direction direction,
                 const Impression& beer, std::vector<Finding>& findings) {
    const Deviation& deviation = *charge.deviation;
    const double points = (direction == Direction::above ? charge.above : charge.below).points /
                          static_cast<double>(beer.draws());
    if (points < fewest_points) {
        return;
    }
    const double noticed = account.chance_of_notice(cause, charge, direction);
    if (noticed >= least_notice) {
        findings.push_back({.section = deviation.section,
                            .attribute = word_of(deviation),
                            .direction = direction,
                            .noticed = noticed,
                            .points = points,
                            .level = level_of(deviation, beer.beer(), beer.profile()),
                            .accepted_low = deviation.accepted_low,
                            .accepted_high = deviation.accepted_high,
                            .assumed = deviation.assumed,
                            .told_by_number = deviation.told_by_number});
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

PointsAtRisk summary(const Estimate<double>& points) {
    const auto interval = points.interval();
    return {.median = interval.median, .low = interval.low, .high = interval.high};
}

std::string id_of(const Finding& finding) {
    const std::string direction = finding.direction == Direction::above ? "above" : "below";
    return std::string(word_of(finding.section)) + "." + finding.attribute + "." + direction;
}

Sheet judge(const Impression& beer, const Yardstick& yardstick, const Tariff& tariff,
            const std::vector<Finding>& beside_levels) {
    const ScoreSheet& score_sheet = tariff.score_sheet();
    const std::vector<Deviation> deviations = deviations_of(beer, yardstick, score_sheet);
    Account account(tariff, deviations, beer.draws(), Noting::each_charge);
    Sheet sheet;
    for (std::size_t cause = 0; cause < score_sheet.causes.size(); ++cause) {
        for (const Charge& charge : account.take(cause)) {
            for (const Direction direction : {Direction::above, Direction::below}) {
                add_finding(account, score_sheet.causes[cause], charge, direction, beer, sheet.findings);
            }
        }
    }
    for (const Finding& finding : beside_levels) {
        account.take(finding.section, finding.points);
        sheet.findings.push_back(finding);
    }
    std::stable_sort(
        sheet.findings.begin(), sheet.findings.end(),
        [](const Finding& first, const Finding& second) { return first.points > second.points; });
    const Style& style = *yardstick.style;
    sheet.strengths = strengths_of(deviations, sheet.findings, beer.beer(), beer.profile());
    sheet.numbers = check_numbers(beer.beer(), style.ranges);
    for (const Section section : sheet_sections) {
        sheet.at_risk[section] = summary(account.at_risk(section));
    }
    sheet.points = account.at_risk();
    sheet.total = summary(sheet.points);
    sheet.if_otherwise_well_made = score_range(sheet.total, score_sheet);
    for (const Attribute attribute : all_attributes()) {
        sheet.attributes_not_described += style.expected[attribute] ? 0 : 1;
        sheet.attributes_untold += style.expected[attribute] && beer.is_untold(attribute) ? 1 : 0;
    }
    sheet.attributes_checked =
        static_cast<int>(attribute_count) - sheet.attributes_not_described - sheet.attributes_untold;
    return sheet;
}

Sheet judge(const Beer& beer, const Profile& profile, const Style& style, const ScoreSheet& score_sheet,
            const std::vector<Finding>& beside_levels) {
    return judge(Impression(beer, profile), Yardstick(style, profile.perception), Tariff(score_sheet),
                 beside_levels);
}

Estimate<double> points_at_risk(const Impression& beer, const Yardstick& yardstick, const Tariff& tariff,
                                const std::vector<Finding>& beside_levels) {
    const ScoreSheet& score_sheet = tariff.score_sheet();
    const std::vector<Deviation> deviations = deviations_of(beer, yardstick, score_sheet);
    Account account(tariff, deviations, beer.draws(), Noting::points_only);
    for (std::size_t cause = 0; cause < score_sheet.causes.size(); ++cause) {
        account.take(cause);
    }
    for (const Finding& finding : beside_levels) {
        account.take(finding.section, finding.points);
    }
    return account.at_risk();
}

}  // namespace entrywise

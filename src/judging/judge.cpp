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
double share_within(const Range<Quantity>& range, const std::vector<Quantity>& printed) {
    const auto within = std::count_if(printed.begin(), printed.end(),
                                      [&range](Quantity value) { return range.contains(value); });
    return static_cast<double>(within) / static_cast<double>(printed.size());
}

template <class Quantity>
std::vector<Quantity> as_printed(const Estimate<Quantity>& estimate) {
    return lift([](Quantity draw) { return at_printed_precision(draw); }, estimate).draws();
}

std::vector<NumberCheck> check_numbers(const Impression& beer, const StyleRanges& ranges) {
    std::vector<NumberCheck> numbers;
    const auto check = [&numbers](Number number, const auto& printed_draws, const auto& range) {
        if (range) {
            numbers.push_back({number, share_within(*range, printed_draws)});
        }
    };
    check(Number::original_gravity, beer.printed_original_gravity(), ranges.original_gravity);
    check(Number::final_gravity, beer.printed_final_gravity(), ranges.final_gravity);
    check(Number::alcohol, beer.printed_alcohol(), ranges.alcohol);
    check(Number::bitterness, as_printed(beer.beer().bitterness.total), ranges.bitterness);
    check(Number::color, as_printed(beer.beer().color.total), ranges.color);
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
    sheet.strengths = strengths_of(deviations, sheet.findings, beer.beer(), beer.profile(), tariff);
    sheet.numbers = check_numbers(beer, style.ranges);
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

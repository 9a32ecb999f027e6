#include "judging/deviation.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

#include "judging/palate_step.hpp"

namespace entrywise {

namespace {

double steps_outside(double level, double low, double high) {
    return level > high ? level - high : std::min(level - low, 0.0);
}

/// A trait that a style asks for at low or more and that is not there at all is missing, which is never less
/// than a plain miss of two steps (working values).
constexpr double asked_for_from = 2.0;
constexpr double absent_below = 0.5;
constexpr double steps_of_missing = -2.0;

bool is_asked_for(Attribute attribute, const Expectation& expectation) {
    return !expectation.assumed && expectation.low >= asked_for_from &&
           scale_of(attribute) == SensoryScale::intensity;
}

/// Whether a number of a draw lies in the style's range as it is printed. Without a range nothing speaks for
/// the beer.
template <class Quantity>
bool is_met(const std::optional<Range<Quantity>>& range, const std::vector<Quantity>& printed,
            std::size_t draw) {
    return range.has_value() && range->contains(printed[draw]);
}

/// Whether in a draw the numbers that stand behind an attribute are inside the style's ranges; not for an
/// attribute with no number behind it.
bool numbers_are_met(Attribute attribute, const Impression& beer, const StyleRanges& ranges,
                     std::size_t draw) {
    switch (attribute) {
        case Attribute::flavor_bitterness:
            return is_met(ranges.bitterness, beer.printed_bitterness(), draw);
        case Attribute::flavor_balance:
            return is_met(ranges.bitterness, beer.printed_bitterness(), draw) &&
                   is_met(ranges.original_gravity, beer.printed_original_gravity(), draw);
        case Attribute::flavor_finish:
        case Attribute::flavor_sweetness:
        case Attribute::mouthfeel_body:
            return is_met(ranges.final_gravity, beer.printed_final_gravity(), draw);
        case Attribute::flavor_malt:
        case Attribute::aroma_malt:
            return is_met(ranges.original_gravity, beer.printed_original_gravity(), draw);
        case Attribute::aroma_alcohol:
        case Attribute::flavor_alcohol:
        case Attribute::mouthfeel_warmth:
            return is_met(ranges.alcohol, beer.printed_alcohol(), draw);
        default:
            return false;
    }
}

/// How far outside the style's range a number is, draw by draw, in steps that a palate tells; empty without a
/// range and where every draw is inside.
template <class Quantity>
std::vector<double> number_steps(const Estimate<Quantity>& estimate, const Span<Quantity>& reach,
                                 const std::optional<Range<Quantity>>& range, std::size_t draws) {
    const bool goes_above = range && range->high && reach.high > *range->high;
    const bool goes_below = range && range->low && reach.low < *range->low;
    if (!goes_above && !goes_below) {
        return {};
    }
    std::vector<double> steps(draws, 0.0);
    for (std::size_t draw = 0; draw < draws; ++draw) {
        const Quantity& value = estimate[draw];
        if (range->high && value > *range->high) {
            steps[draw] = (value - *range->high) / palate_step(*range->high);
        } else if (range->low && value < *range->low) {
            steps[draw] = (value - *range->low) / palate_step(*range->low);
        }
    }
    return steps;
}

/// Steps outside by the number itself, for the attributes that one number decides; empty for the others.
std::vector<double> steps_by_number(Attribute attribute, const Impression& beer, const StyleRanges& ranges) {
    if (attribute == Attribute::flavor_bitterness) {
        return number_steps(beer.beer().tasted_bitterness, beer.reach_of_bitterness(), ranges.bitterness,
                            beer.draws());
    }
    if (attribute == Attribute::flavor_alcohol) {
        return number_steps(beer.beer().alcohol, beer.reach_of_alcohol(), ranges.alcohol, beer.draws());
    }
    return {};
}

bool is_any(const std::vector<double>& steps) {
    return std::any_of(steps.begin(), steps.end(), [](double step) { return step != 0.0; });
}

Deviation deviation_of(Attribute attribute, const Expectation& expectation, double habit,
                       const Impression& beer, const Style& style, const ScoreSheet& score_sheet) {
    Deviation deviation{.section = section_of(attribute),
                        .attribute = attribute,
                        .name = name_of(attribute),
                        .steps = {},
                        .is_inside = true,
                        .habit = habit,
                        .accepted_low = expectation.low,
                        .accepted_high = expectation.high,
                        .weight = expectation.assumed ? score_sheet.assumed_weight : 1.0,
                        .assumed = expectation.assumed,
                        .told_by_number = false};
    const Span<double>& reach = beer.reach(attribute);
    const std::vector<double> by_number = steps_by_number(attribute, beer, style.ranges);
    const bool may_be_missing = is_asked_for(attribute, expectation) && reach.low < absent_below;
    const bool is_inside_by_words =
        reach.low >= expectation.low + habit && reach.high <= expectation.high + habit;
    if (is_inside_by_words && by_number.empty() && !may_be_missing) {
        return deviation;
    }
    const std::span<const double> level = beer.level(attribute);
    deviation.steps.resize(level.size());
    std::size_t told_by_number = 0;
    for (std::size_t draw = 0; draw < level.size(); ++draw) {
        double by_words = steps_outside(level[draw] - habit, expectation.low, expectation.high);
        if (may_be_missing && level[draw] < absent_below) {
            by_words = std::min(by_words, steps_of_missing);
        }
        if (by_words != 0.0 && numbers_are_met(attribute, beer, style.ranges, draw)) {
            by_words *= score_sheet.in_range_weight;
        }
        const bool number_says_more = !by_number.empty() && std::abs(by_number[draw]) > std::abs(by_words);
        deviation.steps[draw] = number_says_more ? by_number[draw] : by_words;
        told_by_number += number_says_more ? 1 : 0;
    }
    deviation.is_inside = !is_any(deviation.steps);
    deviation.told_by_number = 2 * told_by_number > level.size();
    return deviation;
}

Deviation color_deviation(const Estimate<Color>& color, std::size_t draws, const Range<Color>& range) {
    const Color low = std::min(range.low.value_or(0.0 * srm), black_from);
    const Color high = std::min(range.high.value_or(black_from), black_from);
    Deviation deviation{.section = Section::appearance,
                        .attribute = {},
                        .name = "appearance.color",
                        .steps = {},
                        .accepted_low = in(low, srm),
                        .accepted_high = in(range.high.value_or(high), srm)};
    deviation.steps.reserve(draws);
    const double step_above = in(palate_step(high), srm);
    const double step_below = in(palate_step(low), srm);
    for (std::size_t draw = 0; draw < draws; ++draw) {
        const Color seen = std::min(color[draw], black_from);
        const double outside = steps_outside(in(seen, srm), in(low, srm), in(high, srm));
        deviation.steps.push_back(outside / (outside > 0.0 ? step_above : step_below));
    }
    deviation.is_inside = !is_any(deviation.steps);
    return deviation;
}

}  // namespace

std::vector<Deviation> deviations_of(const Impression& beer, const Yardstick& yardstick,
                                     const ScoreSheet& score_sheet) {
    const Style& style = *yardstick.style;
    std::vector<Deviation> deviations;
    deviations.reserve(attribute_count + 1);
    for (const Attribute attribute : all_attributes()) {
        if (const auto& expectation = style.expected[attribute]; expectation && !beer.is_untold(attribute)) {
            deviations.push_back(
                deviation_of(attribute, *expectation, yardstick.habits[attribute], beer, style, score_sheet));
        }
    }
    if (style.ranges.color) {
        deviations.push_back(color_deviation(beer.beer().color.total, beer.draws(), *style.ranges.color));
    }
    return deviations;
}

std::string word_of(const Deviation& deviation) {
    return std::string(deviation.name.substr(deviation.name.find('.') + 1));
}

double level_of(const Deviation& deviation, const Beer& beer, const Profile& profile) {
    return deviation.attribute ? profile.level[*deviation.attribute].median() - deviation.habit
                               : in(beer.color.total.median(), srm);
}

}  // namespace entrywise

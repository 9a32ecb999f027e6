#include "judging/deviation.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

#include "judging/guide_habit.hpp"
#include "judging/palate_step.hpp"

namespace entrywise {

namespace {

double steps_outside(double level, double low, double high) {
    return std::max(level - high, 0.0) + std::min(level - low, 0.0);
}

/// A trait that a style asks for at low or more and that is not there at all is missing, which is never less
/// than a plain miss of two steps (working values). Where a guide words by habit what is hardly there, that
/// is not missing.
constexpr double asked_for_from = 2.0;
constexpr double absent_below = 0.5;
constexpr double steps_of_missing = -2.0;

bool is_asked_for(Attribute attribute, const Expectation& expectation) {
    return !expectation.assumed && expectation.low >= asked_for_from &&
           scale_of(attribute) == SensoryScale::intensity;
}

/// Where a number lies in the style's range as it is printed, a word that is missed counts only so much.
/// Without a range nothing speaks for the beer.
template <class Quantity>
void weigh_inside(std::vector<double>& steps, const std::vector<Quantity>& printed,
                  const std::optional<Range<Quantity>>& range, double weight) {
    for (std::size_t draw = 0; range && draw < steps.size(); ++draw) {
        steps[draw] *= range->contains(printed[draw]) ? weight : 1.0;
    }
}

void weigh_balance(std::vector<double>& steps, const Impression& beer, const StyleRanges& ranges,
                   double weight) {
    if (!ranges.bitterness || !ranges.original_gravity) {
        return;
    }
    for (std::size_t draw = 0; draw < steps.size(); ++draw) {
        const bool are_met = ranges.bitterness->contains(beer.printed_bitterness()[draw]) &&
                             ranges.original_gravity->contains(beer.printed_original_gravity()[draw]);
        steps[draw] *= are_met ? weight : 1.0;
    }
}

/// A word that is missed counts less where the numbers that stand behind it are met; not for an attribute
/// with no number behind it.
void weigh_by_numbers(std::vector<double>& steps, Attribute attribute, const Impression& beer,
                      const StyleRanges& ranges, double weight) {
    switch (attribute) {
        case Attribute::flavor_bitterness:
            return weigh_inside(steps, beer.printed_bitterness(), ranges.bitterness, weight);
        case Attribute::flavor_balance:
            return weigh_balance(steps, beer, ranges, weight);
        case Attribute::flavor_finish:
        case Attribute::flavor_sweetness:
        case Attribute::mouthfeel_body:
            return weigh_inside(steps, beer.printed_final_gravity(), ranges.final_gravity, weight);
        case Attribute::flavor_malt:
        case Attribute::aroma_malt:
            return weigh_inside(steps, beer.printed_original_gravity(), ranges.original_gravity, weight);
        case Attribute::aroma_alcohol:
        case Attribute::flavor_alcohol:
        case Attribute::mouthfeel_warmth:
            return weigh_inside(steps, beer.printed_alcohol(), ranges.alcohol, weight);
        default:
            return;
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

/// How far outside the accepted words a level is, draw by draw.
std::vector<double> steps_by_words(std::span<const double> level, double habit, double highest,
                                   const Expectation& expectation) {
    std::vector<double> steps(level.size());
    for (std::size_t draw = 0; draw < level.size(); ++draw) {
        steps[draw] = steps_outside(worded(level[draw], habit, highest), expectation.low, expectation.high);
    }
    return steps;
}

void count_missing(std::vector<double>& steps, std::span<const double> level, double absent) {
    for (std::size_t draw = 0; draw < level.size(); ++draw) {
        steps[draw] = level[draw] < absent ? std::min(steps[draw], steps_of_missing) : steps[draw];
    }
}

/// Takes the number's steps where it is further out than the word, and tells whether it mostly is.
bool take_number(std::vector<double>& steps, const std::vector<double>& by_number) {
    std::size_t told_by_number = 0;
    for (std::size_t draw = 0; draw < by_number.size(); ++draw) {
        const bool number_says_more = std::abs(by_number[draw]) > std::abs(steps[draw]);
        steps[draw] = number_says_more ? by_number[draw] : steps[draw];
        told_by_number += number_says_more ? 1 : 0;
    }
    return 2 * told_by_number > steps.size();
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
    const double absent = absent_below + std::min(habit, 0.0);
    const bool may_be_missing = is_asked_for(attribute, expectation) && reach.low < absent;
    const double highest = highest_level(attribute);
    const bool is_inside_by_words = worded(reach.low, habit, highest) >= expectation.low &&
                                    worded(reach.high, habit, highest) <= expectation.high;
    if (is_inside_by_words && by_number.empty() && !may_be_missing) {
        return deviation;
    }
    const std::span<const double> level = beer.level(attribute);
    deviation.steps = steps_by_words(level, habit, highest, expectation);
    if (may_be_missing) {
        count_missing(deviation.steps, level, absent);
    }
    if (is_any(deviation.steps)) {
        weigh_by_numbers(deviation.steps, attribute, beer, style.ranges, score_sheet.in_range_weight);
    }
    deviation.told_by_number = take_number(deviation.steps, by_number);
    if (deviation.told_by_number) {
        // The range is printed, whatever is taken for granted of the word.
        deviation.weight = 1.0;
        deviation.assumed = false;
    }
    deviation.is_inside = !is_any(deviation.steps);
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

/// What a guide wants opaque is so by its color, which is judged by itself: a stout that lets light through
/// is no worse for being clear.
Expectation as_judged(Attribute attribute, Expectation expectation) {
    constexpr double cloudy = 1.0;
    if (attribute == Attribute::appearance_clarity && expectation.high < cloudy) {
        expectation.high = highest_level(attribute);
    }
    return expectation;
}

}  // namespace

std::vector<Deviation> deviations_of(const Impression& beer, const Yardstick& yardstick,
                                     const ScoreSheet& score_sheet) {
    const Style& style = *yardstick.style;
    std::vector<Deviation> deviations;
    deviations.reserve(attribute_count + 1);
    for (const Attribute attribute : all_attributes()) {
        if (style.expected[attribute] && !beer.is_untold(attribute)) {
            const Expectation judged = as_judged(attribute, *style.expected[attribute]);
            deviations.push_back(
                deviation_of(attribute, judged, yardstick.habits[attribute], beer, style, score_sheet));
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

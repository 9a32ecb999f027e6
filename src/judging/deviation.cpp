#include "judging/deviation.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "judging/guide_habit.hpp"
#include "judging/palate_step.hpp"
#include "quantity/printed_precision.hpp"

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

/// Whether, draw by draw, a number lies in the style's range as it is printed. Without a range nothing speaks
/// for the beer.
template <class Quantity>
std::vector<bool> in_range(const Estimate<Quantity>& estimate, const std::optional<Range<Quantity>>& range) {
    std::vector<bool> inside;
    inside.reserve(estimate.count());
    for (const Quantity& value : estimate.draws()) {
        inside.push_back(range.has_value() && range->contains(at_printed_precision(value)));
    }
    return inside;
}

std::vector<bool> both(const std::vector<bool>& first, const std::vector<bool>& second) {
    std::vector<bool> result;
    result.reserve(first.size());
    std::transform(first.begin(), first.end(), second.begin(), std::back_inserter(result),
                   std::logical_and<>());
    return result;
}

/// Whether, draw by draw, the numbers that stand behind an attribute are inside the style's ranges; empty for
/// an attribute with no number behind it.
std::vector<bool> numbers_are_met(Attribute attribute, const Beer& beer, const StyleRanges& ranges) {
    switch (attribute) {
        case Attribute::flavor_bitterness:
            return in_range(beer.tasted_bitterness, ranges.bitterness);
        case Attribute::flavor_balance:
            return both(in_range(beer.tasted_bitterness, ranges.bitterness),
                        in_range(beer.original_gravity.total, ranges.original_gravity));
        case Attribute::flavor_finish:
        case Attribute::flavor_sweetness:
        case Attribute::mouthfeel_body:
            return in_range(beer.final_gravity, ranges.final_gravity);
        case Attribute::flavor_malt:
        case Attribute::aroma_malt:
            return in_range(beer.original_gravity.total, ranges.original_gravity);
        case Attribute::aroma_alcohol:
        case Attribute::flavor_alcohol:
        case Attribute::mouthfeel_warmth:
            return in_range(beer.alcohol, ranges.alcohol);
        default:
            return {};
    }
}

/// How far outside the style's range a number is, in steps that a palate tells; all zero without a range.
template <class Quantity>
std::vector<double> number_steps(const Estimate<Quantity>& estimate,
                                 const std::optional<Range<Quantity>>& range) {
    std::vector<double> steps(estimate.count(), 0.0);
    for (std::size_t draw = 0; range && draw < steps.size(); ++draw) {
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
std::vector<double> steps_by_number(Attribute attribute, const Beer& beer, const StyleRanges& ranges) {
    if (attribute == Attribute::flavor_bitterness) {
        return number_steps(beer.tasted_bitterness, ranges.bitterness);
    }
    if (attribute == Attribute::flavor_alcohol) {
        return number_steps(beer.alcohol, ranges.alcohol);
    }
    return {};
}

/// Whether every draw of a level lies in what the style accepts.
bool is_always_inside(const Estimate<double>& level, double low, double high) {
    return std::all_of(level.draws().begin(), level.draws().end(),
                       [&](double draw) { return draw >= low && draw <= high; });
}

bool is_any(const std::vector<double>& steps) {
    return std::any_of(steps.begin(), steps.end(), [](double step) { return step != 0.0; });
}

Deviation deviation_of(Attribute attribute, const Expectation& expectation, double habit, const Beer& beer,
                       const Profile& profile, const Style& style, const ScoreSheet& score_sheet) {
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
    const Estimate<double>& level = profile.level[attribute];
    const std::vector<double> by_number = steps_by_number(attribute, beer, style.ranges);
    const bool asked_for = is_asked_for(attribute, expectation);
    if (is_always_inside(level, expectation.low + habit, expectation.high + habit) && !is_any(by_number) &&
        !(asked_for && habit != 0.0)) {
        deviation.steps.assign(level.count(), 0.0);
        return deviation;
    }
    const std::vector<bool> met = numbers_are_met(attribute, beer, style.ranges);
    deviation.steps.reserve(level.count());
    std::size_t told_by_number = 0;
    for (std::size_t draw = 0; draw < level.count(); ++draw) {
        const bool numbers_met = !met.empty() && met[draw];
        const double outside = steps_outside(level[draw] - habit, expectation.low, expectation.high);
        const bool is_missing = asked_for && level[draw] < absent_below;
        const double weight = numbers_met ? score_sheet.in_range_weight : 1.0;
        const double by_words = weight * (is_missing ? std::min(outside, steps_of_missing) : outside);
        const bool number_says_more = !by_number.empty() && std::abs(by_number[draw]) > std::abs(by_words);
        deviation.steps.push_back(number_says_more ? by_number[draw] : by_words);
        told_by_number += number_says_more ? 1 : 0;
    }
    deviation.is_inside = !is_any(deviation.steps);
    deviation.told_by_number = 2 * told_by_number > level.count();
    return deviation;
}

Deviation color_deviation(const Estimate<Color>& color, const Range<Color>& range) {
    const Color low = std::min(range.low.value_or(0.0 * srm), black_from);
    const Color high = std::min(range.high.value_or(black_from), black_from);
    Deviation deviation{.section = Section::appearance,
                        .attribute = {},
                        .name = "appearance.color",
                        .steps = {},
                        .accepted_low = in(low, srm),
                        .accepted_high = in(range.high.value_or(high), srm)};
    deviation.steps.reserve(color.count());
    for (const Color& value : color.draws()) {
        const Color seen = std::min(value, black_from);
        const double outside = steps_outside(in(seen, srm), in(low, srm), in(high, srm));
        deviation.steps.push_back(outside / in(palate_step(outside > 0.0 ? high : low), srm));
    }
    deviation.is_inside = !is_any(deviation.steps);
    return deviation;
}

bool is_untold(Attribute attribute, const Profile& profile) {
    return std::find(profile.untold.begin(), profile.untold.end(), attribute) != profile.untold.end();
}

}  // namespace

std::vector<Deviation> deviations_of(const Beer& beer, const Profile& profile, const Style& style,
                                     const ScoreSheet& score_sheet) {
    const ByAttribute<double> habits = guide_habits(style, profile.perception);
    std::vector<Deviation> deviations;
    deviations.reserve(attribute_count + 1);
    for (const Attribute attribute : all_attributes()) {
        if (const auto& expectation = style.expected[attribute];
            expectation && !is_untold(attribute, profile)) {
            deviations.push_back(
                deviation_of(attribute, *expectation, habits[attribute], beer, profile, style, score_sheet));
        }
    }
    if (style.ranges.color) {
        deviations.push_back(color_deviation(beer.color.total, *style.ranges.color));
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

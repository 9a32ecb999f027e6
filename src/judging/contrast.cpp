#include "judging/contrast.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <numeric>
#include <optional>

#include "judging/palate_step.hpp"

namespace entrywise {

namespace {

/// An interval in steps.
struct Steps {
    double low = 0.0;
    double high = 0.0;

    double width() const { return high - low; }
};

/// How far below a border the levels of an interval lie on average, those above it counting as zero.
double mean_below(const Steps& levels, double border) {
    if (levels.width() <= 0.0) {
        return std::max(border - levels.low, 0.0);
    }
    const double end = std::clamp(border, levels.low, levels.high);
    const double nearest = std::max(border - end, 0.0);
    const double farthest = std::max(border - levels.low, 0.0);
    return (farthest * farthest - nearest * nearest) / (2.0 * levels.width());
}

double mean_outside(const Steps& levels, const Steps& other) {
    return mean_below(levels, other.low) + mean_below({-levels.high, -levels.low}, -other.high);
}

Contrast contrast_of(Trait trait, const Steps& first, const Steps& second, double beyond_ends) {
    const auto widened = [beyond_ends](const Steps& steps) {
        return Steps{steps.low - beyond_ends, steps.high + beyond_ends};
    };
    const Steps one = widened(first);
    const Steps other = widened(second);
    const double shared = std::min(one.high, other.high) - std::max(one.low, other.low);
    const double all = std::max(one.high, other.high) - std::min(one.low, other.low);
    return {.trait = trait,
            .steps = (mean_outside(one, other) + mean_outside(other, one)) / 2.0,
            .gap = std::max({second.low - first.high, first.low - second.high, 0.0}),
            .meets = first.low <= second.high && second.low <= first.high,
            .overlap = all > 0.0 ? std::max(shared, 0.0) / all : 1.0,
            .second_is_higher = second.low + second.high > first.low + first.high};
}

/// A word stands for the step around it.
Contrast contrast_of(Attribute attribute, const Expectation& first, const Expectation& second) {
    constexpr double half_a_step = 0.5;
    return contrast_of(attribute, Steps{first.low, first.high}, Steps{second.low, second.high}, half_a_step);
}

template <class Quantity>
bool meet(const Range<Quantity>& first, const Range<Quantity>& second) {
    const auto begins_inside = [](const Range<Quantity>& one, const Range<Quantity>& other) {
        return one.low && other.contains(*one.low);
    };
    return begins_inside(first, second) || begins_inside(second, first) || (!first.low && !second.low);
}

/// Two ranges in steps; an open end reaches as far as the other style does, or takes nothing away.
template <class Quantity>
std::optional<Contrast> contrast_of(Number number, const std::optional<Range<Quantity>>& first,
                                    const std::optional<Range<Quantity>>& second, double (*steps)(Quantity)) {
    if (!first || !second) {
        return std::nullopt;
    }
    std::vector<Quantity> ends;
    for (const auto& end : {first->low, first->high, second->low, second->high}) {
        if (end) {
            ends.push_back(*end);
        }
    }
    if (ends.empty()) {
        return std::nullopt;
    }
    const auto [lowest, highest] = std::minmax_element(ends.begin(), ends.end());
    const auto in_steps = [&, low = *lowest, high = *highest](const Range<Quantity>& range) {
        return Steps{steps(range.low.value_or(low)), steps(range.high.value_or(high))};
    };
    constexpr double nothing_beyond = 0.0;
    Contrast contrast = contrast_of(number, in_steps(*first), in_steps(*second), nothing_beyond);
    contrast.meets = meet(*first, *second);
    return contrast;
}

bool holds(const std::vector<Contrast>& contrasts, const Trait& trait) {
    return std::any_of(contrasts.begin(), contrasts.end(),
                       [&](const Contrast& contrast) { return contrast.trait == trait; });
}

/// Two traits that are one thing on the tongue; of a pair only the one that separates more is told.
constexpr std::array<std::pair<Trait, Trait>, 3> one_thing{{
    {Attribute::flavor_bitterness, Number::bitterness},
    {Attribute::flavor_alcohol, Number::alcohol},
    {Attribute::mouthfeel_warmth, Number::alcohol},
}};

}  // namespace

std::vector<Contrast> contrasts_between(const Style& first, const Style& second) {
    std::vector<Contrast> contrasts;
    for (const Attribute attribute : all_attributes()) {
        const auto& one = first.expected[attribute];
        const auto& other = second.expected[attribute];
        if (one && other) {
            contrasts.push_back(contrast_of(attribute, *one, *other));
        }
    }
    const auto add = [&](const std::optional<Contrast>& contrast) {
        if (contrast) {
            contrasts.push_back(*contrast);
        }
    };
    const StyleRanges& one = first.ranges;
    const StyleRanges& other = second.ranges;
    add(contrast_of(Number::original_gravity, one.original_gravity, other.original_gravity,
                    palate_steps_of_original_gravity));
    add(contrast_of(Number::final_gravity, one.final_gravity, other.final_gravity,
                    palate_steps_of_final_gravity));
    add(contrast_of<AlcoholByVolume>(Number::alcohol, one.alcohol, other.alcohol, palate_steps));
    add(contrast_of<Bitterness>(Number::bitterness, one.bitterness, other.bitterness, palate_steps));
    add(contrast_of<Color>(Number::color, one.color, other.color, palate_steps));
    return contrasts;
}

bool sets_apart(const Contrast& contrast) {
    constexpr double least_steps = 0.25;
    constexpr double most_overlap = 1.0 / 3.0;
    const bool goes_by_the_pour = contrast.trait == Trait(Attribute::appearance_head_size) ||
                                  contrast.trait == Trait(Attribute::appearance_head_retention);
    return !goes_by_the_pour && contrast.steps >= least_steps && contrast.overlap < most_overlap;
}

std::vector<Contrast> separating(const std::vector<Contrast>& contrasts) {
    std::vector<Contrast> apart;
    std::copy_if(contrasts.begin(), contrasts.end(), std::back_inserter(apart), sets_apart);
    if (holds(apart, Number::alcohol)) {
        std::erase_if(apart, [](const Contrast& contrast) {
            return contrast.trait == Trait(Number::original_gravity);
        });
    }
    std::stable_sort(apart.begin(), apart.end(),
                     [](const Contrast& left, const Contrast& right) { return left.steps > right.steps; });
    std::vector<Contrast> told;
    for (const Contrast& contrast : apart) {
        const bool is_told = std::any_of(one_thing.begin(), one_thing.end(), [&](const auto& pair) {
            return (pair.first == contrast.trait && holds(told, pair.second)) ||
                   (pair.second == contrast.trait && holds(told, pair.first));
        });
        if (!is_told) {
            told.push_back(contrast);
        }
    }
    return told;
}

double distance_of(const std::vector<Contrast>& contrasts) {
    const double sum =
        std::accumulate(contrasts.begin(), contrasts.end(), 0.0,
                        [](double steps, const Contrast& contrast) { return steps + contrast.steps; });
    return contrasts.empty() ? 0.0 : sum / static_cast<double>(contrasts.size());
}

}  // namespace entrywise

#include "advice/correction.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "advice/level_in.hpp"
#include "advice/lever.hpp"
#include "advice/note.hpp"
#include "advice/numbers_kept.hpp"
#include "judging/guide_habit.hpp"
#include "judging/tasting.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_corrections = 2;

/// How far inside the border a correction ends, in steps; what is more likely inside than out already, and at
/// risk as it may come out otherwise, wants more (working values).
constexpr double inside = 0.2;
constexpr double well_inside = 0.6;

/// What a finding is told by: the number, or the level as the style's guide words it, as the finding's own
/// level is.
class Gauge {
  public:
    Gauge(const Finding& finding, const Style& style, const Perception& perception) : finding_(finding) {
        if (const auto attribute = attribute_named(finding.section, finding.attribute)) {
            habit_ = guide_habits(style, perception)[*attribute];
        }
    }

    double number_of(const Beer& beer) const {
        return finding_.attribute == "bitterness" ? in(beer.tasted_bitterness.median(), ibu)
                                                  : in(beer.alcohol.median(), percent_by_volume);
    }

    double operator()(const Tasting& tasting) const {
        return finding_.told_by_number ? number_of(tasting.beer)
                                       : level_in(tasting, finding_.section, finding_.attribute) - habit_;
    }

  private:
    const Finding& finding_;
    double habit_ = 0.0;
};

/// With every uncertain input at its middle.
Tasting taste_at_middle(const Recipe& recipe, const Perception& perception) {
    return taste(recipe, perception, 1);
}

/// A little inside the end of a range that a finding has passed, so that what is weighed in whole grams keeps
/// within; its level where the range is open there.
template <class Quantity>
double end_passed(const Finding& finding, const std::optional<Range<Quantity>>& range, Quantity unit) {
    constexpr double by_weighing = 0.02;
    const bool above = finding.direction == Direction::above;
    const auto end = above ? range->high : range->low;
    return end ? (above ? 1.0 - by_weighing : 1.0 + by_weighing) * in(*end, unit) : finding.level;
}

/// The least change to a level that ends where the style accepts: a little inside the border.
double wanted_level(const Finding& finding, const Style& style) {
    if (finding.told_by_number) {
        return finding.attribute == "bitterness"
                   ? end_passed(finding, style.ranges.bitterness, ibu)
                   : end_passed(finding, style.ranges.alcohol, percent_by_volume);
    }
    const double middle = 0.5 * (finding.accepted_low + finding.accepted_high);
    const double half = middle - finding.accepted_low;
    const bool is_sensed = attribute_named(finding.section, finding.attribute).has_value();
    const double wanted_inside = !is_likely_inside(finding) ? inside : is_sensed ? well_inside : half;
    const double margin = std::min(wanted_inside, half);
    return finding.direction == Direction::above ? finding.accepted_high - margin
                                                 : finding.accepted_low + margin;
}

/// What a change is to bring about: a level no further out than is wanted, in a beer that keeps the numbers
/// of the style as well as it does now.
class Aim {
  public:
    Aim(const Finding& finding, const Gauge& gauge, const Style& style, const Perception& perception,
        const Beer& now, double wanted)
        : finding_(finding),
          gauge_(gauge),
          style_(style),
          perception_(perception),
          now_(now),
          wanted_(wanted) {}

    bool is_reached(const Recipe& recipe) const {
        const double level = level_of(recipe);
        return finding_.direction == Direction::above ? level <= wanted_ : level >= wanted_;
    }

    bool is_kept(const Recipe& recipe) const {
        return numbers_are_kept(style_, now_, taste_at_middle(recipe, perception_).beer);
    }

    /// What is more likely inside than out is helped by a part of the way too.
    bool is_worth_a_part(const Recipe& from, const Recipe& to) const {
        return is_likely_inside(finding_) && std::abs(level_of(to) - level_of(from)) >= inside;
    }

  private:
    double level_of(const Recipe& recipe) const { return gauge_(taste_at_middle(recipe, perception_)); }

    const Finding& finding_;
    const Gauge& gauge_;
    const Style& style_;
    const Perception& perception_;
    const Beer& now_;
    double wanted_;
};

/// Two settings within a step, of which the second alone is past what the test asks for; the given end is.
template <class IsPast>
std::pair<double, double> crossing(double near, double past, double step, IsPast is_past) {
    while (std::abs(past - near) > step) {
        const double between = 0.5 * (near + past);
        (is_past(between) ? past : near) = between;
    }
    return {near, past};
}

/// The setting nearest to where the recipe stands that reaches the aim, or where the numbers of the style end
/// before that, so much of the way as helps.
std::optional<double> least_change(const Lever& lever, const Aim& aim) {
    const auto is_reached = [&](double setting) { return aim.is_reached(lever.at(setting)); };
    const auto is_kept = [&](double setting) { return aim.is_kept(lever.at(setting)); };
    const double near = std::clamp(lever.now, lever.lowest, lever.highest);
    const std::array ends{lever.lowest, lever.highest};
    const auto end = std::find_if(ends.begin(), ends.end(), is_reached);
    if (end == ends.end() || (near == lever.now && is_reached(near))) {
        return std::nullopt;
    }
    const double reaching = crossing(near, *end, lever.step, is_reached).second;
    if (is_kept(reaching)) {
        return reaching;
    }
    const double part =
        crossing(near, reaching, lever.step, [&](double setting) { return !is_kept(setting); }).first;
    return aim.is_worth_a_part(lever.at(near), lever.at(part)) ? std::optional(part) : std::nullopt;
}

double steps_outside(const Finding& finding) {
    return std::max(finding.level - finding.accepted_high, finding.accepted_low - finding.level);
}

std::string general_advice(const Finding& finding, const PhraseBook& phrases) {
    const Phrase phrase = phrases.phrase_for(std::string(word_of(finding.section)), finding.attribute);
    return finding.direction == Direction::above ? phrase.lower : phrase.raise;
}

}  // namespace

std::vector<std::string> corrections_of(const Finding& finding, const Recipe& recipe, const Beer& beer,
                                        const Style& style, const Perception& perception,
                                        const PhraseBook& phrases) {
    // The middle of the inputs is not quite the median of what comes out; the difference is carried over, as
    // far as it does not take the level out again. Not so for what is far outside: inside the two lie close.
    const Gauge gauge(finding, style, perception);
    const double median = finding.told_by_number ? gauge.number_of(beer) : finding.level;
    const bool far_outside = finding.told_by_number || steps_outside(finding) > 1.0;
    const Tasting at_middle = taste_at_middle(recipe, perception);
    const double offset =
        far_outside ? 0.0 : std::clamp(gauge(at_middle) - median, -0.5 * inside, 0.5 * inside);
    const double wanted = wanted_level(finding, style) + offset;
    const bool other_way =
        finding.direction == Direction::above ? wanted - offset >= median : wanted - offset <= median;
    const Aim aim(finding, gauge, style, perception, at_middle.beer, wanted);
    const std::vector<Lever> levers =
        other_way ? std::vector<Lever>() : levers_for(finding, recipe, beer, style);
    std::vector<std::string> corrections;
    for (const Lever& lever : levers) {
        const bool enough =
            corrections.size() == most_corrections || (lever.is_last_resort && !corrections.empty());
        if (enough) {
            continue;
        }
        if (const auto setting = least_change(lever, aim)) {
            corrections.push_back(lever.told(*setting));
        }
    }
    const std::string advice = general_advice(finding, phrases);
    if (corrections.empty() && !advice.empty()) {
        corrections.push_back(advice);
    }
    return corrections;
}

}  // namespace entrywise

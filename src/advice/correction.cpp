#include "advice/correction.hpp"

#include <algorithm>
#include <optional>

#include "advice/lever.hpp"
#include "advice/note.hpp"
#include "brewing/brew.hpp"
#include "brewing/deviates.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_corrections = 2;
constexpr int bisections = 9;

/// How far inside the border a correction ends, in steps (working value).
constexpr double inside = 0.2;

/// The number that a finding is told by, where it is further out than the word.
double number_of(const Finding& finding, const Beer& beer) {
    return finding.attribute == "bitterness" ? in(beer.tasted_bitterness.median(), ibu)
                                             : in(beer.alcohol.median(), percent_by_volume);
}

/// The level of the finding's attribute, or the number that tells it, with every uncertain input at its
/// middle.
double middle_level(const Finding& finding, const Recipe& recipe, const Perception& perception) {
    Deviates middle(1);
    const Beer beer = brew(recipe, middle);
    if (finding.told_by_number) {
        return number_of(finding, beer);
    }
    const auto attribute = attribute_named(finding.section, finding.attribute);
    return attribute ? sense(beer, perception, middle).level[*attribute].median()
                     : in(beer.color.total.median(), srm);
}

/// A little inside the end of a range that a finding has passed, so that what is weighed in whole grams keeps
/// within; its level where the range is open there.
template <class Quantity>
double end_passed(const Finding& finding, const std::optional<Range<Quantity>>& range, Quantity unit) {
    constexpr double well_inside = 0.02;
    const bool above = finding.direction == Direction::above;
    const auto end = above ? range->high : range->low;
    return end ? (above ? 1.0 - well_inside : 1.0 + well_inside) * in(*end, unit) : finding.level;
}

/// The least change to a level that ends where the style accepts: a little inside the border.
double wanted_level(const Finding& finding, const Style& style) {
    if (finding.told_by_number) {
        return finding.attribute == "bitterness"
                   ? end_passed(finding, style.ranges.bitterness, ibu)
                   : end_passed(finding, style.ranges.alcohol, percent_by_volume);
    }
    // What is more likely inside than out wants no more than the middle of what is accepted.
    const double middle = 0.5 * (finding.accepted_low + finding.accepted_high);
    if (is_likely_inside(finding)) {
        return middle;
    }
    const double margin = std::min(inside, middle - finding.accepted_low);
    return finding.direction == Direction::above ? finding.accepted_high - margin
                                                 : finding.accepted_low + margin;
}

/// The setting at which the level is as wanted, if it lies between the lever's ends.
std::optional<double> setting_for(const Finding& finding, const Lever& lever, double wanted,
                                  const Perception& perception) {
    double low = lever.lowest;
    double high = lever.highest;
    const double at_low = middle_level(finding, lever.at(low), perception);
    const double at_high = middle_level(finding, lever.at(high), perception);
    const bool rises = at_high > at_low;
    const bool reaches = std::min(at_low, at_high) <= wanted && wanted <= std::max(at_low, at_high);
    if (!reaches) {
        return std::nullopt;
    }
    for (int step = 0; step < bisections; ++step) {
        const double middle = 0.5 * (low + high);
        const bool too_low = middle_level(finding, lever.at(middle), perception) < wanted;
        (too_low == rises ? low : high) = middle;
    }
    return 0.5 * (low + high);
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
    const double median = finding.told_by_number ? number_of(finding, beer) : finding.level;
    const bool far_outside = finding.told_by_number || steps_outside(finding) > 1.0;
    const double offset = far_outside ? 0.0
                                      : std::clamp(middle_level(finding, recipe, perception) - median,
                                                   -0.5 * inside, 0.5 * inside);
    const double wanted = wanted_level(finding, style) + offset;
    const bool other_way =
        finding.direction == Direction::above ? wanted - offset >= median : wanted - offset <= median;
    std::vector<std::string> corrections;
    for (const Lever& lever : levers_for(finding, recipe, beer, style)) {
        if (other_way || corrections.size() == most_corrections) {
            break;
        }
        if (const auto setting = setting_for(finding, lever, wanted, perception)) {
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

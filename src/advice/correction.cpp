#include "advice/correction.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

#include "advice/level_in.hpp"
#include "advice/lever.hpp"
#include "advice/note.hpp"
#include "advice/numbers_kept.hpp"
#include "judging/guide_habit.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_corrections = 2;

/// How far inside the border a correction ends, in steps; what is more likely inside than out already, and at
/// risk as it may come out otherwise, wants more (working values).
constexpr double inside = 0.2;
constexpr double well_inside = 0.6;

/// How far a level is out beyond what is wanted; less than nothing where it is further in.
double beyond(const Finding& finding, double level, double wanted) {
    return finding.direction == Direction::above ? level - wanted : wanted - level;
}

bool is_no_further_out(const Finding& finding, double level, double wanted) {
    return beyond(finding, level, wanted) <= 0.0;
}

/// The border of what is accepted that a finding has passed.
double border_of(const Finding& finding) {
    return finding.direction == Direction::above ? finding.accepted_high : finding.accepted_low;
}

/// What a finding is told by: the number, or the level as the style's guide words it, as the finding's own
/// level is.
class Gauge {
  public:
    Gauge(const Finding& finding, const Style& style, const Perception& perception)
        : finding_(finding), attribute_(attribute_named(finding.section, finding.attribute)) {
        if (attribute_) {
            habit_ = guide_habits(style, perception)[*attribute_];
        }
    }

    /// Of what the laboratory reads and what is tasted of it, what is further out: the one is printed, the
    /// other judged.
    double number_of(const Beer& beer) const {
        if (finding_.attribute != "bitterness") {
            return in(beer.alcohol.median(), percent_by_volume);
        }
        const double read = in(beer.bitterness.total.median(), ibu);
        const double tasted = in(beer.tasted_bitterness.median(), ibu);
        return finding_.direction == Direction::above ? std::max(read, tasted) : std::min(read, tasted);
    }

    double operator()(const Tasting& tasting) const {
        return finding_.told_by_number ? number_of(tasting.beer) : level_of(tasting);
    }

    /// What is told by its number may be out by its word too: by so many steps.
    double word_beyond(const Tasting& tasting) const {
        return beyond(finding_, level_of(tasting), border_of(finding_));
    }

    /// What is wanted beyond the end of the scale, where there is nothing more to take or to add, is had at
    /// that end if that is in style.
    double on_scale(double wanted) const {
        if (finding_.told_by_number || !attribute_) {
            return wanted;
        }
        const double border = border_of(finding_);
        const double highest = highest_level(*attribute_) - habit_;
        return finding_.direction == Direction::above ? std::max(wanted, std::min(-habit_, border))
                                                      : std::min(wanted, std::max(highest, border));
    }

  private:
    double level_of(const Tasting& tasting) const {
        return level_in(tasting, finding_.section, finding_.attribute) - habit_;
    }

    const Finding& finding_;
    std::optional<Attribute> attribute_;
    double habit_ = 0.0;
};

/// How far inside the border a correction is to end: in steps, or in parts of a number.
double margin_of(const Finding& finding) {
    // What is weighed in whole grams is to keep within.
    constexpr double by_weighing = 0.02;
    if (finding.told_by_number) {
        return by_weighing;
    }
    const double half = 0.5 * (finding.accepted_high - finding.accepted_low);
    const bool is_sensed = attribute_named(finding.section, finding.attribute).has_value();
    const double wanted = !is_likely_inside(finding) ? inside : is_sensed ? well_inside : half;
    return std::min(wanted, half);
}

/// Inside the end of a range that a finding has passed; its level where the range is open there.
template <class Quantity>
double inside_range(const Finding& finding, const std::optional<Range<Quantity>>& range, Quantity unit,
                    double margin) {
    const bool above = finding.direction == Direction::above;
    const auto end = above ? range->high : range->low;
    return end ? (above ? 1.0 - margin : 1.0 + margin) * in(*end, unit) : finding.level;
}

/// The level inside the border by a margin, from where the finding is.
double level_inside(const Finding& finding, const Style& style, double margin) {
    if (finding.told_by_number) {
        return finding.attribute == "bitterness"
                   ? inside_range(finding, style.ranges.bitterness, ibu, margin)
                   : inside_range(finding, style.ranges.alcohol, percent_by_volume, margin);
    }
    return border_of(finding) + (finding.direction == Direction::above ? -margin : margin);
}

/// What a changed recipe comes to.
struct Effect {
    double level = 0.0;  ///< what the finding is told by
    double word_beyond = 0.0;
    bool keeps_numbers = true;  ///< those of the style, as well as now
};

/// What a lever brings about at its settings, each tasted once.
class Turned {
  public:
    Turned(const Lever& lever, const Gauge& gauge, const Style& style, const Tasting& now,
           const Perception& perception)
        : lever_(lever), gauge_(gauge), style_(style), now_(now.beer), perception_(perception) {
        effects_.emplace(lever.now, effect_of(now));
    }

    const Lever& lever() const { return lever_; }

    const Effect& at(double setting) {
        const auto known = effects_.find(setting);
        return known != effects_.end() ? known->second
                                       : effects_.emplace(setting, tasted_at(setting)).first->second;
    }

  private:
    Effect tasted_at(double setting) const {
        return effect_of(taste_at_middle(lever_.at(setting), perception_));
    }

    Effect effect_of(const Tasting& tasting) const {
        return {gauge_(tasting), gauge_.word_beyond(tasting), numbers_are_kept(style_, now_, tasting.beer)};
    }

    const Lever& lever_;
    const Gauge& gauge_;
    const Style& style_;
    const Beer& now_;
    const Perception& perception_;
    std::map<double, Effect> effects_;
};

/// What a change is to bring about: a level no further out than is wanted.
class Aim {
  public:
    Aim(const Finding& finding, double wanted) : finding_(finding), wanted_(wanted) {}

    bool is_reached(const Effect& effect) const {
        const double to_go = beyond(finding_, effect.level, wanted_);
        return (finding_.told_by_number ? std::max(to_go, effect.word_beyond) : to_go) <= 0.0;
    }

    /// What is more likely inside than out is helped by a part of the way too.
    bool is_worth_a_part(const Effect& from, const Effect& to) const {
        return is_likely_inside(finding_) && std::abs(to.level - from.level) >= inside;
    }

  private:
    const Finding& finding_;
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

/// The setting nearest to where the recipe stands that reaches an aim, and the last on the way to it at which
/// the numbers of the style are kept.
struct Reaching {
    double setting = 0.0;
    double kept = 0.0;
};

std::optional<Reaching> reaching(Turned& turned, const Aim& aim) {
    const Lever& lever = turned.lever();
    const auto is_reached = [&](double setting) { return aim.is_reached(turned.at(setting)); };
    const double near = std::clamp(lever.now, lever.lowest, lever.highest);
    const std::array ends{lever.lowest, lever.highest};
    const auto* const end = std::find_if(ends.begin(), ends.end(), is_reached);
    if (end == ends.end() || (near == lever.now && is_reached(near))) {
        return std::nullopt;
    }
    const double setting = crossing(near, *end, lever.step, is_reached).second;
    const auto is_lost = [&turned](double each) { return !turned.at(each).keeps_numbers; };
    return Reaching{setting, is_lost(setting) ? crossing(near, setting, lever.step, is_lost).first : setting};
}

/// The least change that reaches the aim, or where the numbers of the style end before that, so much of the
/// way as helps.
std::optional<double> least_change(Turned& turned, const Aim& aim) {
    const auto found = reaching(turned, aim);
    if (!found || found->kept == found->setting) {
        return found ? std::optional(found->setting) : std::nullopt;
    }
    const bool helps = aim.is_worth_a_part(turned.at(turned.lever().now), turned.at(found->kept));
    return helps ? std::optional(found->kept) : std::nullopt;
}

/// As far on the way to the aim as the numbers of the style bear, if that is half of it.
std::optional<double> most_of_the_way(Turned& turned, const Aim& aim, const Aim& half_way) {
    const auto found = reaching(turned, aim);
    return found && half_way.is_reached(turned.at(found->kept)) ? std::optional(found->kept) : std::nullopt;
}

double steps_outside(const Finding& finding) {
    return std::max(finding.level - finding.accepted_high, finding.accepted_low - finding.level);
}

/// What each lever can do for the aim by itself, the first that can.
std::vector<Correction> least_changes(std::vector<Turned>& levers, const Aim& aim, std::size_t most) {
    std::vector<Correction> corrections;
    for (Turned& turned : levers) {
        const Lever& lever = turned.lever();
        const bool enough = corrections.size() == most || (lever.is_last_resort && !corrections.empty());
        if (enough) {
            continue;
        }
        if (const auto setting = least_change(turned, aim)) {
            corrections.push_back({.told = lever.told(*setting), .recipe = lever.at(*setting)});
        }
    }
    return corrections;
}

/// What the first lever that can does for the aim by going at least half of the way.
std::vector<Correction> half_the_change(std::vector<Turned>& levers, const Aim& aim, const Aim& half_way) {
    for (Turned& turned : levers) {
        const Lever& lever = turned.lever();
        const auto most = most_of_the_way(turned, aim, half_way);
        if (const auto setting = most ? most : least_change(turned, half_way)) {
            const std::string how_far =
                most ? ", which goes most of the way" : ", which goes half of the way";
            return {{.told = lever.told(*setting) + how_far,
                     .recipe = lever.at(*setting),
                     .goes_half_way = true}};
        }
    }
    return {};
}

double median_of(const Finding& finding, const Gauge& gauge, const Beer& beer) {
    return finding.told_by_number ? gauge.number_of(beer) : finding.level;
}

/// The middle of the inputs is not quite the median of what comes out; the difference is carried over, as far
/// as it does not take the level out again. Not so for what is far outside: inside the two lie close.
double offset_of_middle(const Finding& finding, const Gauge& gauge, const Tasting& at_middle, double median) {
    const bool far_outside = finding.told_by_number || steps_outside(finding) > 1.0;
    return far_outside ? 0.0 : std::clamp(gauge(at_middle) - median, -0.5 * inside, 0.5 * inside);
}

}  // namespace

Tasting taste_at_middle(const Recipe& recipe, const Perception& perception) {
    return taste(recipe, perception, 1);
}

std::vector<Correction> corrections_of(const Finding& finding, const Tasting& now, const Beer& beer,
                                       const Style& style, const Perception& perception,
                                       const PhraseBook& phrases, Reach reach) {
    const Gauge gauge(finding, style, perception);
    const double median = median_of(finding, gauge, beer);
    const double wanted = level_inside(finding, style, margin_of(finding));
    if (is_no_further_out(finding, median, wanted)) {
        return advice_in_general(finding, phrases);
    }
    const std::vector<Lever> levers = levers_for(finding, now.recipe, beer, style);
    std::vector<Turned> turned;
    turned.reserve(levers.size());
    for (const Lever& lever : levers) {
        turned.emplace_back(lever, gauge, style, now, perception);
    }
    const double offset = offset_of_middle(finding, gauge, now, median);
    const Aim all_the_way(finding, gauge.on_scale(wanted + offset));
    std::vector<Correction> corrections = least_changes(turned, all_the_way, most_corrections);
    if (!corrections.empty()) {
        return corrections;
    }
    if (reach == Reach::half_way_too) {
        const Aim half_way(finding, 0.5 * (median + wanted) + offset);
        corrections = half_the_change(turned, all_the_way, half_way);
    }
    const std::vector<Correction> besides = advice_in_general(finding, phrases);
    corrections.insert(corrections.end(), besides.begin(), besides.end());
    return corrections;
}

std::vector<Correction> advice_in_general(const Finding& finding, const PhraseBook& phrases) {
    const Phrase phrase = phrase_on(finding, phrases);
    const std::string& advice = finding.direction == Direction::above ? phrase.lower : phrase.raise;
    return advice.empty() ? std::vector<Correction>()
                          : std::vector<Correction>{{.told = advice, .recipe = std::nullopt}};
}

std::vector<std::string> in_words(const std::vector<Correction>& corrections) {
    std::vector<std::string> words;
    for (const Correction& correction : corrections) {
        words.push_back(correction.told);
    }
    return words;
}

bool is_brought_in(const Finding& finding, const Tasting& now, const Tasting& changed, const Beer& beer,
                   const Style& style, const Perception& perception) {
    constexpr double half_as_far = 0.5;
    const double wanted = level_inside(finding, style, half_as_far * margin_of(finding));
    const Gauge gauge(finding, style, perception);
    const double median = median_of(finding, gauge, beer);
    const double level = gauge(changed) - offset_of_middle(finding, gauge, now, median);
    return !is_no_further_out(finding, median, wanted) && is_no_further_out(finding, level, wanted);
}

}  // namespace entrywise

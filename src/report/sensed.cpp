#include "report/sensed.hpp"

#include <algorithm>

#include "advice/note.hpp"
#include "base/text.hpp"
#include "judging/guide_habit.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

/// Half a step of the scale: nearer to none than to the first word.
constexpr double hardly_there = 0.5;

bool is_untold(const Check& check, Attribute attribute) {
    const std::vector<Attribute>& open = check.profile.untold;
    return check.profile.level[attribute].count() == 0 ||
           std::find(open.begin(), open.end(), attribute) != open.end();
}

bool is_intensity(Attribute attribute) {
    return scale_of(attribute) == SensoryScale::intensity;
}

/// A check, with how the guide words its style.
struct Sensed {
    const Check& check;
    ByAttribute<double> habits;
};

/// What is sensed as the guide words it, which is what it is held against.
Interval80<double> level_of(const Sensed& sensed, Attribute attribute) {
    const double habit = sensed.habits[attribute];
    const double top = highest_level(attribute);
    const Interval80<double> level = sensed.check.profile.level[attribute].interval();
    return {worded(level.median, habit, top), worded(level.low, habit, top), worded(level.high, habit, top)};
}

bool is_absent(const Sensed& sensed, Attribute attribute) {
    return is_intensity(attribute) && !is_untold(sensed.check, attribute) &&
           level_of(sensed, attribute).high < hardly_there;
}

/// The style wants none, or next to none, of it.
bool is_unwanted(const Check& check, Attribute attribute) {
    const auto& accepted = check.style.expected[attribute];
    return accepted && accepted->high < hardly_there;
}

/// What says that the beer is out of style in this; null where nothing does.
const Finding* finding_on(const Check& check, Attribute attribute) {
    const auto found =
        std::find_if(check.findings.begin(), check.findings.end(), [&](const AdvisedFinding& advised) {
            return advised.finding.section == section_of(attribute) &&
                   advised.finding.attribute == word_of(attribute);
        });
    return found == check.findings.end() ? nullptr : &found->finding;
}

SensedTrait trait_of(const Sensed& sensed, Attribute attribute) {
    SensedTrait trait{.attribute = attribute, .level = level_of(sensed, attribute), .side = {}};
    if (const Finding* const finding = finding_on(sensed.check, attribute)) {
        trait.side = finding->direction == Direction::above ? "above" : "below";
        trait.only_perhaps = !finding->told_by_number && is_likely_inside(*finding);
    }
    return trait;
}

bool has_a_row(const Sensed& sensed, Attribute attribute) {
    const Check& check = sensed.check;
    if (finding_on(check, attribute) != nullptr) {
        return true;
    }
    if (is_untold(check, attribute)) {
        return false;
    }
    const bool silent = !check.style.expected[attribute];
    return !(is_absent(sensed, attribute) && (silent || is_unwanted(check, attribute)));
}

/// What the style does not want and the beer does not have, each word once.
std::vector<std::string> absent_words(const Check& check, std::optional<Section> section) {
    const Sensed sensed{check, guide_habits(check.style, check.profile.perception)};
    std::vector<std::string> absent;
    for (const Attribute attribute : all_attributes()) {
        const std::string name = spoken(word_of(attribute));
        const bool told = std::find(absent.begin(), absent.end(), name) != absent.end();
        if (!told && (!section || section_of(attribute) == *section) && is_absent(sensed, attribute) &&
            is_unwanted(check, attribute) && finding_on(check, attribute) == nullptr) {
            absent.push_back(name);
        }
    }
    return absent;
}

}  // namespace

std::vector<SensedTrait> sensed_in(const Check& check, Section section) {
    const Sensed sensed{check, guide_habits(check.style, check.profile.perception)};
    std::vector<SensedTrait> traits;
    for (const Attribute attribute : all_attributes()) {
        if (section_of(attribute) == section && has_a_row(sensed, attribute)) {
            traits.push_back(trait_of(sensed, attribute));
        }
    }
    return traits;
}

std::string rightly_absent(const Check& check) {
    return listed(absent_words(check, {}), "and");
}

std::string rightly_absent(const Check& check, Section section) {
    return listed(absent_words(check, section), "or");
}

}  // namespace entrywise

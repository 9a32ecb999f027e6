#include "report/page_profile.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "base/text.hpp"
#include "judging/guide_habit.hpp"
#include "report/capitalized.hpp"
#include "report/picture_level.hpp"
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
    const double top = top_of(scale_of(attribute));
    const Interval80<double> level = sensed.check.profile.level[attribute].interval();
    const auto worded = [&](double level_sensed) { return std::clamp(level_sensed - habit, 0.0, top); };
    return {worded(level.median), worded(level.low), worded(level.high)};
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

/// Which way the beer is out of style, if a finding says so.
std::string_view side_of(const Check& check, Attribute attribute) {
    const auto found =
        std::find_if(check.findings.begin(), check.findings.end(), [&](const AdvisedFinding& advised) {
            return advised.finding.section == section_of(attribute) &&
                   advised.finding.attribute == word_of(attribute);
        });
    if (found == check.findings.end()) {
        return {};
    }
    return found->finding.direction == Direction::above ? "above" : "below";
}

bool has_a_row(const Sensed& sensed, Attribute attribute) {
    const Check& check = sensed.check;
    if (!side_of(check, attribute).empty()) {
        return true;
    }
    if (is_untold(check, attribute)) {
        return false;
    }
    const bool silent = !check.style.expected[attribute];
    return !(is_absent(sensed, attribute) && (silent || is_unwanted(check, attribute)));
}

Json row_of(const Sensed& sensed, Attribute attribute) {
    const Check& check = sensed.check;
    const Interval80<double> level = level_of(sensed, attribute);
    const std::string side(side_of(check, attribute));
    const auto& accepted = check.style.expected[attribute];
    return {{"name", spoken(word_of(attribute))},
            {"level", std::string(word_for(scale_of(attribute), level.median))},
            {"side", side},
            {"is_above", side == "above"},
            {"silent", !accepted},
            {"picture", level_picture(attribute, accepted, level, !side.empty())}};
}

}  // namespace

Json profile_values(const Check& check) {
    const Sensed sensed{check, guide_habits(check.style, check.profile.perception)};
    Json sections = Json::array();
    for (const Section section : {Section::aroma, Section::flavor, Section::appearance, Section::mouthfeel}) {
        Json rows = Json::array();
        for (const Attribute attribute : all_attributes()) {
            if (section_of(attribute) == section && has_a_row(sensed, attribute)) {
                rows.push_back(row_of(sensed, attribute));
            }
        }
        if (!rows.empty()) {
            sections.push_back({{"name", capitalized(std::string(title_of(section)))},
                                {"word", std::string(word_of(section))},
                                {"rows", std::move(rows)}});
        }
    }
    return sections;
}

std::string rightly_absent(const Check& check) {
    const Sensed sensed{check, guide_habits(check.style, check.profile.perception)};
    std::vector<std::string> absent;
    for (const Attribute attribute : all_attributes()) {
        const std::string name = spoken(word_of(attribute));
        const bool told = std::find(absent.begin(), absent.end(), name) != absent.end();
        if (!told && is_absent(sensed, attribute) && is_unwanted(check, attribute) &&
            side_of(check, attribute).empty()) {
            absent.push_back(name);
        }
    }
    return listed(absent, "and");
}

}  // namespace entrywise

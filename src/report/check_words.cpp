#include "report/check_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

/// The attributes that a condition holds for, by section.
template <class Condition>
std::string by_section(Condition condition) {
    std::vector<std::string> sections;
    for (const Section section : sheet_sections) {
        std::vector<std::string> words;
        for (const Attribute attribute : all_attributes()) {
            if (section_of(attribute) == section && condition(attribute)) {
                words.push_back(spoken(word_of(attribute)));
            }
        }
        if (!words.empty()) {
            sections.push_back(fmt::format("{} ({})", title_of(section), joined(words, ", ")));
        }
    }
    return listed(sections, "and");
}

/// The attributes that the style says nothing of.
std::string not_described(const Style& style) {
    return by_section([&](Attribute attribute) { return !style.expected[attribute]; });
}

/// The attributes that the style describes and the recipe leaves open.
std::string untold(const Check& check) {
    const std::vector<Attribute>& open = check.profile.untold;
    return by_section([&](Attribute attribute) {
        return check.style.expected[attribute] &&
               std::find(open.begin(), open.end(), attribute) != open.end();
    });
}

}  // namespace

std::string frame_words(const Sheet& sheet, const ScoreSheet& score_sheet) {
    const ScoreRange& frame = sheet.if_otherwise_well_made;
    std::string span = shortest(frame.low);
    if (frame.high > frame.low) {
        span += "–" + shortest(frame.high);
    }
    std::string bands;
    if (!frame.bands.empty()) {
        bands = ", " + frame.bands.front();
        bands += frame.bands.size() > 1 ? " to " + frame.bands.back() : "";
    }
    return fmt::format("{} of {}{}", span, shortest(all_points_of(score_sheet)), bands);
}

std::string risk_words() {
    return "The points above are those that the recipe puts at risk; brewing, keeping and serving may take "
           "more.";
}

std::vector<std::string> not_judged_sentences(const Check& check) {
    std::vector<std::string> sentences;
    if (check.sheet.attributes_not_described > 0) {
        sentences.push_back(fmt::format("{} describes {} of {} things sensed; it is silent on {}.",
                                        check.style.code,
                                        check.sheet.attributes_checked + check.sheet.attributes_untold,
                                        static_cast<int>(attribute_count), not_described(check.style)));
    }
    if (check.sheet.attributes_untold > 0) {
        sentences.push_back(fmt::format("The recipe leaves open, or the beer hides: {}.", untold(check)));
    }
    if (!check.basis.empty()) {
        sentences.push_back(check.basis);
    }
    sentences.emplace_back(
        "No recipe tells of infection, a stalled fermentation, air taken up in packaging, light-struck "
        "bottles, "
        "staling with age or a poor pour: that is left to the palate.");
    return sentences;
}

std::string numbers_words(const Sheet& sheet) {
    const auto inside = std::count_if(sheet.numbers.begin(), sheet.numbers.end(),
                                      [](const NumberCheck& number) { return number.within >= 0.5; });
    return sheet.numbers.empty()
               ? std::string("the guide prints no numbers")
               : fmt::format("{} of {} numbers most likely inside", inside, sheet.numbers.size());
}

}  // namespace entrywise

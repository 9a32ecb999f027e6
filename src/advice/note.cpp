#include "advice/note.hpp"

#include <algorithm>
#include <optional>

#include "base/number.hpp"

namespace entrywise {

namespace {

std::optional<SensoryScale> scale_of_finding(const Finding& finding) {
    const auto attribute = attribute_named(finding.section, finding.attribute);
    return attribute ? std::optional(scale_of(*attribute)) : std::nullopt;
}

std::string as_srm(double color) {
    return fixed(color, color < 10.0 ? 1 : 0);
}

std::string capitalized(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

/// A level outside is told by a word outside: rounded away from what is accepted, not back into it.
std::string word_outside(SensoryScale scale, const Finding& finding) {
    const bool above = finding.direction == Direction::above;
    const double outside = above ? std::max(finding.level, finding.accepted_high + 1.0)
                                 : std::min(finding.level, finding.accepted_low - 1.0);
    return std::string(word_for(scale, outside));
}

}  // namespace

std::string accepted_in_words(const Finding& finding) {
    const auto scale = scale_of_finding(finding);
    if (!scale) {
        return as_srm(finding.accepted_low) + " to " + as_srm(finding.accepted_high) + " SRM";
    }
    const std::string low(word_for(*scale, finding.accepted_low));
    const std::string high(word_for(*scale, finding.accepted_high));
    return low == high ? low : low + " to " + high;
}

std::string level_in_words(const Finding& finding) {
    const auto scale = scale_of_finding(finding);
    return scale ? word_outside(*scale, finding) : as_srm(finding.level) + " SRM";
}

std::string note_on(const Finding& finding, const Style& style, const PhraseBook& phrases) {
    const std::string name = std::string(word_of(finding.section)) + "." + finding.attribute;
    const auto found = phrases.find(name);
    Phrase phrase;
    phrase.noun = finding.attribute;
    if (found != phrases.end()) {
        phrase = found->second;
    }
    const std::string& effect = finding.direction == Direction::above ? phrase.above : phrase.below;
    const std::string asks = finding.assumed ? " is taken to have " : " asks for ";
    std::string note = capitalized(phrase.noun) + " comes out " + level_in_words(finding) + "; " + style.name + asks +
                       accepted_in_words(finding);
    if (!effect.empty()) {
        note += ": " + effect;
    }
    return note + ".";
}

}  // namespace entrywise

#include "advice/note.hpp"

#include <algorithm>
#include <optional>

#include "base/number.hpp"
#include "quantity/printed_precision.hpp"

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

template <class Quantity>
bool are_one(const std::optional<Range<Quantity>>& first, const std::optional<Range<Quantity>>& second) {
    return first && second && first->low == second->low && first->high == second->high;
}

/// Whether what a specialty style is missed by is what its base asks for.
bool is_asked_by(const Style& base, const Style& style, const Finding& finding) {
    const auto attribute = attribute_named(finding.section, finding.attribute);
    if (!attribute) {
        return are_one(base.ranges.color, style.ranges.color);
    }
    if (finding.told_by_number) {
        return finding.attribute == "bitterness" ? are_one(base.ranges.bitterness, style.ranges.bitterness)
                                                 : are_one(base.ranges.alcohol, style.ranges.alcohol);
    }
    const auto& expectation = base.expected[*attribute];
    return expectation && expectation->low == finding.accepted_low &&
           expectation->high == finding.accepted_high && expectation->assumed == finding.assumed;
}

/// The style that asks for it: the base where it does, with its standing.
std::string who_asks(const Finding& finding, const Style& style, const std::optional<Style>& base_style) {
    return base_style && is_asked_by(*base_style, style, finding) ? base_style->name + ", its base,"
                                                                  : style.name;
}

template <class Quantity>
std::string past_range(const Estimate<Quantity>& estimate, const std::optional<Range<Quantity>>& range,
                       Quantity unit, int decimals, const std::string& unit_text, const std::string& asking) {
    const auto number = [&](Quantity value) { return fixed(in(value, unit), decimals); };
    std::string text = " comes out about " + number(estimate.median()) + unit_text + "; " + asking;
    if (range && range->low && range->high) {
        return text + " runs from " + number(*range->low) + " to " + number(*range->high);
    }
    if (range && range->high) {
        return text + " runs up to " + number(*range->high);
    }
    if (range && range->low) {
        return text + " starts at " + number(*range->low);
    }
    return text + " runs to other numbers";
}

/// A miss that the number shows more plainly than the word.
std::string in_numbers(const Finding& finding, const Beer& beer, const Style& style,
                       const std::string& asking) {
    if (finding.attribute == "bitterness") {
        return past_range(beer.bitterness.total, style.ranges.bitterness, ibu, bitterness_decimals, " IBU",
                          asking);
    }
    return past_range(beer.alcohol, style.ranges.alcohol, percent_by_volume, alcohol_decimals, " % by volume",
                      asking);
}

/// Whether it cannot be sensed at all where it should be.
bool is_missing(const Finding& finding) {
    return scale_of_finding(finding) == SensoryScale::intensity &&
           word_outside(SensoryScale::intensity, finding) == words_of(SensoryScale::intensity).front();
}

std::string in_words(const Finding& finding, const std::string& asking) {
    const std::string asks = finding.assumed ? " is taken to have " : " asks for ";
    const bool perhaps = is_likely_inside(finding);
    const std::string comes = is_missing(finding)
                                  ? (perhaps ? " may be missing" : " is missing")
                                  : (perhaps ? " may come out " : " comes out ") + level_in_words(finding);
    return comes + "; " + asking + asks + accepted_in_words(finding);
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
    if (const auto scale = scale_of_finding(finding)) {
        return word_outside(*scale, finding);
    }
    if (is_likely_inside(finding)) {
        return finding.direction == Direction::above ? "over " + as_srm(finding.accepted_high) + " SRM"
                                                     : "under " + as_srm(finding.accepted_low) + " SRM";
    }
    return as_srm(finding.level) + " SRM";
}

bool is_likely_inside(const Finding& finding) {
    // Less than half a step off still rounds to a word that is accepted.
    const double rounding = scale_of_finding(finding) ? 0.5 : 0.0;
    return finding.level >= finding.accepted_low - rounding &&
           finding.level <= finding.accepted_high + rounding;
}

Phrase phrase_on(const Finding& finding, const PhraseBook& phrases) {
    constexpr double hardly_any = 0.5;
    Phrase phrase = phrases.phrase_for(std::string(word_of(finding.section)), finding.attribute);
    if (finding.accepted_low > hardly_any && !phrase.more_than_asked.empty()) {
        phrase.above = phrase.more_than_asked;
    }
    if (finding.accepted_low > hardly_any && !phrase.temper.empty()) {
        phrase.lower = phrase.temper;
    }
    return phrase;
}

std::string note_on(const Strength& strength, const PhraseBook& phrases) {
    const Attribute attribute = strength.attribute;
    const Phrase phrase =
        phrases.phrase_for(std::string(word_of(section_of(attribute))), std::string(word_of(attribute)));
    const double level = std::clamp(strength.level, strength.accepted_low, strength.accepted_high);
    return capitalized(phrase.noun) + " is " + std::string(word_for(scale_of(attribute), level)) +
           (phrase.right.empty() ? ", as the style asks" : ": " + phrase.right) + ".";
}

std::string note_on(const Finding& finding, const Beer& beer, const Style& style, const PhraseBook& phrases,
                    const std::optional<Style>& base_style) {
    const Phrase phrase = phrase_on(finding, phrases);
    const std::string& said = finding.direction == Direction::above ? phrase.above : phrase.below;
    const std::string effect = is_missing(finding) ? "" : said;
    const std::string asking = who_asks(finding, style, base_style);
    const std::string how =
        finding.told_by_number ? in_numbers(finding, beer, style, asking) : in_words(finding, asking);
    // A number is of the beer, wherever it shows.
    const std::string& noun = finding.told_by_number ? finding.attribute : phrase.noun;
    return capitalized(noun) + how + (effect.empty() ? "" : ": " + effect) + ".";
}

}  // namespace entrywise

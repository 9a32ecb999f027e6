#include "report/trait_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/number.hpp"
#include "base/text.hpp"
#include "quantity/printed_precision.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

/// Attributes that need no section beside them, since they are told of in one alone.
bool stands_alone(Attribute attribute) {
    switch (attribute) {
        case Attribute::flavor_bitterness:
        case Attribute::flavor_sweetness:
        case Attribute::flavor_finish:
        case Attribute::flavor_balance:
        case Attribute::flavor_salt:
        case Attribute::flavor_spice:
            return true;
        default:
            return section_of(attribute) == Section::appearance ||
                   section_of(attribute) == Section::mouthfeel;
    }
}

std::string_view of_number(Number number, bool higher) {
    switch (number) {
        case Number::original_gravity:
            return higher ? "a higher original gravity" : "a lower original gravity";
        case Number::final_gravity:
            return higher ? "a higher final gravity" : "a lower final gravity";
        case Number::alcohol:
            return higher ? "stronger" : "weaker";
        case Number::bitterness:
            return higher ? "more bitter" : "less bitter";
        case Number::color:
            return higher ? "darker" : "paler";
    }
    return {};
}

std::string of_attribute(Attribute attribute, bool higher) {
    switch (attribute) {
        case Attribute::flavor_bitterness:
            return higher ? "more bitter" : "less bitter";
        case Attribute::flavor_sweetness:
            return higher ? "sweeter" : "less sweet";
        case Attribute::flavor_finish:
            return higher ? "a sweeter finish" : "a drier finish";
        case Attribute::flavor_balance:
            return higher ? "a balance towards bitterness" : "a balance towards malt";
        case Attribute::appearance_clarity:
            return higher ? "clearer" : "hazier";
        case Attribute::mouthfeel_body:
            return higher ? "a fuller body" : "a lighter body";
        case Attribute::appearance_head_size:
            return higher ? "a larger head" : "a smaller head";
        case Attribute::appearance_head_retention:
            return higher ? "a longer lasting head" : "a head that falls sooner";
        default:
            return fmt::format("{} {}", higher ? "more" : "less", title_of(Trait(attribute)));
    }
}

}  // namespace

NumberWords words_for(Number number) {
    switch (number) {
        case Number::original_gravity:
            return {"original_gravity", "original gravity", "", specific_gravity_decimals};
        case Number::final_gravity:
            return {"final_gravity", "final gravity", "", specific_gravity_decimals};
        case Number::alcohol:
            return {"alcohol", "alcohol", "% vol", alcohol_decimals};
        case Number::bitterness:
            return {"bitterness", "bitterness", "IBU", bitterness_decimals};
        case Number::color:
            return {"color", "color", "SRM", color_decimals};
    }
    return {};
}

std::string title_of(const Trait& trait) {
    if (const auto* number = std::get_if<Number>(&trait)) {
        return std::string(words_for(*number).name);
    }
    const auto attribute = std::get<Attribute>(trait);
    const std::string word = spoken(word_of(attribute));
    return stands_alone(attribute) ? word : fmt::format("{} {}", word, word_of(section_of(attribute)));
}

std::string accepted_words(Attribute attribute, const Expectation& expectation) {
    const SensoryScale scale = scale_of(attribute);
    const std::string_view low = word_for(scale, expectation.low);
    const std::string_view high = word_for(scale, expectation.high);
    return low == high ? std::string(low) : fmt::format("{} to {}", low, high);
}

std::string range_words(Number number, const PlainRange& range, const TextStyle& style) {
    const NumberWords words = words_for(number);
    const std::string unit = words.unit.empty() ? "" : fmt::format(" {}", words.unit);
    const std::string high = range.high ? range_end_text(*range.high, words.decimals) : std::string();
    const std::string_view below = range.below_high ? "<" : "";
    if (range.low && range.high) {
        return fmt::format("{}{}{}{}{}", range_end_text(*range.low, words.decimals), dash(style), below, high,
                           unit);
    }
    if (range.low) {
        return fmt::format("{}{} and up", range_end_text(*range.low, words.decimals), unit);
    }
    return fmt::format("{} {}{}", range.below_high ? "below" : "up to", high, unit);
}

std::string second_in_words(const Contrast& contrast) {
    const auto* number = std::get_if<Number>(&contrast.trait);
    return number != nullptr ? std::string(of_number(*number, contrast.second_is_higher))
                             : of_attribute(std::get<Attribute>(contrast.trait), contrast.second_is_higher);
}

std::string plain_words(const std::vector<std::string>& names) {
    std::string text = joined(names, ", ");
    std::replace(text.begin(), text.end(), '-', ' ');
    return text;
}

}  // namespace entrywise

#include "style/attribute.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace entrywise {

namespace {

struct Description {
    Section section;
    std::string_view name;
    SensoryScale scale = SensoryScale::intensity;
};

constexpr std::array<Description, attribute_count> descriptions{{
    {Section::aroma, "aroma.malt"},
    {Section::aroma, "aroma.caramel"},
    {Section::aroma, "aroma.toast"},
    {Section::aroma, "aroma.roast"},
    {Section::aroma, "aroma.hop"},
    {Section::aroma, "aroma.ester"},
    {Section::aroma, "aroma.phenol"},
    {Section::aroma, "aroma.alcohol"},
    {Section::aroma, "aroma.sour"},
    {Section::aroma, "aroma.funk"},
    {Section::aroma, "aroma.smoke"},
    {Section::aroma, "aroma.diacetyl"},
    {Section::aroma, "aroma.dms"},
    {Section::aroma, "aroma.sulfur"},
    {Section::appearance, "appearance.clarity", SensoryScale::clarity},
    {Section::appearance, "appearance.head_size"},
    {Section::appearance, "appearance.head_retention"},
    {Section::flavor, "flavor.malt"},
    {Section::flavor, "flavor.sweetness"},
    {Section::flavor, "flavor.caramel"},
    {Section::flavor, "flavor.toast"},
    {Section::flavor, "flavor.roast"},
    {Section::flavor, "flavor.hop"},
    {Section::flavor, "flavor.bitterness"},
    {Section::flavor, "flavor.ester"},
    {Section::flavor, "flavor.phenol"},
    {Section::flavor, "flavor.alcohol"},
    {Section::flavor, "flavor.sour"},
    {Section::flavor, "flavor.funk"},
    {Section::flavor, "flavor.smoke"},
    {Section::flavor, "flavor.salt"},
    {Section::flavor, "flavor.spice"},
    {Section::flavor, "flavor.diacetyl"},
    {Section::flavor, "flavor.finish", SensoryScale::finish},
    {Section::flavor, "flavor.balance", SensoryScale::balance},
    {Section::mouthfeel, "mouthfeel.body", SensoryScale::body},
    {Section::mouthfeel, "mouthfeel.carbonation"},
    {Section::mouthfeel, "mouthfeel.warmth"},
    {Section::mouthfeel, "mouthfeel.creaminess"},
    {Section::mouthfeel, "mouthfeel.astringency"},
}};

constexpr std::array<std::string_view, section_count> section_words{"aroma", "appearance", "flavor",
                                                                    "mouthfeel", "overall"};

constexpr std::array<std::string_view, 8> intensity_words{"none",   "very low",    "low",  "medium-low",
                                                          "medium", "medium-high", "high", "very high"};
constexpr std::array<std::string_view, 8> body_words{"very thin", "very light",  "light", "medium-light",
                                                     "medium",    "medium-full", "full",  "very full"};
constexpr std::array<std::string_view, 6> clarity_words{"opaque",        "cloudy", "hazy",
                                                        "slightly hazy", "clear",  "brilliant"};
constexpr std::array<std::string_view, 7> finish_words{"very dry",     "dry",   "medium-dry", "medium",
                                                       "medium-sweet", "sweet", "very sweet"};
constexpr std::array<std::string_view, 7> balance_words{"very malty",      "malty",  "slightly malty", "even",
                                                        "slightly bitter", "bitter", "very bitter"};

/// Words that guides use for the same intensity: common practice of style guides.
constexpr std::array<std::pair<std::string_view, double>, 8> intensity_synonyms{{
    {"light", 2.0},
    {"moderate", 4.0},
    {"strong", 6.0},
    {"moderately low", 3.0},
    {"moderately high", 5.0},
    {"very light", 1.0},
    {"intense", 7.0},
    {"very strong", 7.0},
}};

const Description& description_of(Attribute attribute) {
    return descriptions[static_cast<std::size_t>(attribute)];
}

}  // namespace

const std::array<Attribute, attribute_count>& all_attributes() {
    static constexpr auto all = [] {
        std::array<Attribute, attribute_count> attributes{};
        for (std::size_t index = 0; index < attribute_count; ++index) {
            attributes[index] = static_cast<Attribute>(index);
        }
        return attributes;
    }();
    return all;
}

Section section_of(Attribute attribute) {
    return description_of(attribute).section;
}

SensoryScale scale_of(Attribute attribute) {
    return description_of(attribute).scale;
}

std::string_view name_of(Attribute attribute) {
    return description_of(attribute).name;
}

std::string_view word_of(Attribute attribute) {
    return name_of(attribute).substr(word_of(section_of(attribute)).size() + 1);
}

std::string spoken(std::string_view attribute_word) {
    std::string result(attribute_word);
    std::replace(result.begin(), result.end(), '_', ' ');
    return result == "dms" ? "DMS" : result;
}

std::string_view word_of(Section section) {
    return section_words[static_cast<std::size_t>(section)];
}

std::optional<Attribute> attribute_named(Section section, std::string_view word) {
    const auto& all = all_attributes();
    const auto found = std::find_if(all.begin(), all.end(), [&](Attribute attribute) {
        return section_of(attribute) == section && word_of(attribute) == word;
    });
    return found == all.end() ? std::nullopt : std::optional(*found);
}

std::optional<Section> section_named(std::string_view word) {
    const auto found = std::find(section_words.begin(), section_words.end(), word);
    if (found == section_words.end()) {
        return std::nullopt;
    }
    return static_cast<Section>(found - section_words.begin());
}

std::span<const std::string_view> words_of(SensoryScale scale) {
    switch (scale) {
        case SensoryScale::intensity:
            return intensity_words;
        case SensoryScale::body:
            return body_words;
        case SensoryScale::clarity:
            return clarity_words;
        case SensoryScale::finish:
            return finish_words;
        case SensoryScale::balance:
            return balance_words;
    }
    return intensity_words;
}

double highest_level(Attribute attribute) {
    return static_cast<double>(words_of(scale_of(attribute)).size() - 1);
}

std::optional<double> level_named(SensoryScale scale, std::string_view word) {
    const auto words = words_of(scale);
    const auto found = std::find(words.begin(), words.end(), word);
    if (found != words.end()) {
        return static_cast<double>(found - words.begin());
    }
    if (scale == SensoryScale::intensity) {
        const auto* synonym = std::find_if(intensity_synonyms.begin(), intensity_synonyms.end(),
                                           [&](const auto& pair) { return pair.first == word; });
        if (synonym != intensity_synonyms.end()) {
            return synonym->second;
        }
    }
    return std::nullopt;
}

std::string_view word_for(SensoryScale scale, double level) {
    const auto words = words_of(scale);
    const double highest = static_cast<double>(words.size() - 1);
    const double nearest = std::round(std::clamp(level, 0.0, highest));
    return words[static_cast<std::size_t>(nearest)];
}

}  // namespace entrywise

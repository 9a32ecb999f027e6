#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

/// The sections of the fifty-point sheet, in the order in which the sheet lists them.
enum class Section { aroma, appearance, flavor, mouthfeel, overall };
inline constexpr std::size_t section_count = 5;
inline constexpr std::array<Section, section_count> sheet_sections{
    Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel, Section::overall};

/// The scales on which a sensed attribute is told. Intensity and body run from 0 to 7, clarity from 0 to 5,
/// finish and balance from 0 to 6, each whole number a word.
enum class SensoryScale { intensity, body, clarity, finish, balance };

/// Everything a judge senses of a beer, by section.
enum class Attribute {
    aroma_malt,
    aroma_caramel,
    aroma_toast,
    aroma_roast,
    aroma_hop,
    aroma_ester,
    aroma_phenol,
    aroma_alcohol,
    aroma_sour,
    aroma_funk,
    aroma_smoke,
    aroma_diacetyl,
    aroma_dms,
    aroma_sulfur,
    appearance_clarity,
    appearance_head_size,
    appearance_head_retention,
    flavor_malt,
    flavor_sweetness,
    flavor_caramel,
    flavor_toast,
    flavor_roast,
    flavor_hop,
    flavor_bitterness,
    flavor_ester,
    flavor_phenol,
    flavor_alcohol,
    flavor_sour,
    flavor_funk,
    flavor_smoke,
    flavor_salt,
    flavor_spice,
    flavor_diacetyl,
    flavor_finish,
    flavor_balance,
    mouthfeel_body,
    mouthfeel_carbonation,
    mouthfeel_warmth,
    mouthfeel_creaminess,
    mouthfeel_astringency
};
inline constexpr std::size_t attribute_count = 40;

/// All attributes, in the order of the enumeration.
const std::array<Attribute, attribute_count>& all_attributes();

Section section_of(Attribute attribute);
SensoryScale scale_of(Attribute attribute);

/// The attribute's name among all: `aroma.hop`. It lasts as long as the program.
std::string_view name_of(Attribute attribute);

/// The attribute's word within its section: `hop`, `head_retention`.
std::string_view word_of(Attribute attribute);
std::string_view word_of(Section section);

/// The word as a sentence takes it: `head retention`, `DMS`.
std::string spoken(std::string_view attribute_word);

/// The attribute of that section and word, if there is one.
std::optional<Attribute> attribute_named(Section section, std::string_view word);
std::optional<Section> section_named(std::string_view word);

/// The words of a scale, lowest first.
std::span<const std::string_view> words_of(SensoryScale scale);

/// The last word of its scale as a level; the first is level 0.
double highest_level(Attribute attribute);

/// The level a word stands for on a scale. Words that mean the same are known: `light` is `low`, `moderate`
/// is `medium`, `strong` is `high`.
std::optional<double> level_named(SensoryScale scale, std::string_view word);

/// The word nearest to a level. Levels beyond an end take the word of that end.
std::string_view word_for(SensoryScale scale, double level);

/// One value for each attribute.
template <class Value>
class ByAttribute {
  public:
    Value& operator[](Attribute attribute) { return values_[static_cast<std::size_t>(attribute)]; }
    const Value& operator[](Attribute attribute) const {
        return values_[static_cast<std::size_t>(attribute)];
    }

  private:
    std::array<Value, attribute_count> values_{};
};

/// One value for each section of the sheet.
template <class Value>
class BySection {
  public:
    Value& operator[](Section section) { return values_[static_cast<std::size_t>(section)]; }
    const Value& operator[](Section section) const { return values_[static_cast<std::size_t>(section)]; }

  private:
    std::array<Value, section_count> values_{};
};

}  // namespace entrywise

#include "brewing/yeast_character.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace entrywise {

namespace {

constexpr double strongest = 7.0;

/// Levels of acid and funk that cultures bring when they are given their time (working values after the words
/// style guides use for Berliner, gose, lambic and Brett beer).
constexpr LevelSpan sourness_of_lactic_culture{3.5, 5.5};
constexpr LevelSpan sourness_of_mixed_culture{3.0, 5.5};
constexpr LevelSpan funk_of_brettanomyces{2.5, 5.0};
constexpr LevelSpan funk_of_mixed_culture{1.5, 4.5};

/// Acidulated malt holds one to two percent of lactic acid; some 4 g/L of it only set the pH of a pale mash.
/// Beyond that the acid is tasted, about one step for each 8 g/L (working values from the flavor threshold of
/// lactic acid near 0.4 g/L, Meilgaard, MBAA Technical Quarterly 12, 1975, from memory).
constexpr double acid_malt_free_to = 12.0;
constexpr double acid_malt_per_step = 8.0;

Estimate<double> draw_level(const std::string& input, const LevelSpan& span, Deviates& deviates) {
    const double middle = 0.5 * (span.low + span.high);
    const double half_width = 0.5 * (span.high - span.low);
    std::vector<double> levels;
    levels.reserve(deviates.draws());
    for (const double deviate : deviates.of(input)) {
        levels.push_back(std::clamp(middle + half_width * deviate / Deviates::eight_in_ten, 0.0, strongest));
    }
    return Estimate<double>(std::move(levels));
}

Estimate<double> none(std::size_t draws) {
    return Estimate<double>(std::vector<double>(draws, 0.0));
}

Estimate<double> stronger(const Estimate<double>& first, const Estimate<double>& second) {
    return lift([](double left, double right) { return std::max(left, right); }, first, second);
}

TemperatureDifference above_middle_of(const YeastClass& yeast, Temperature temperature) {
    const Temperature middle = yeast.temperature.low + 0.5 * (yeast.temperature.high - yeast.temperature.low);
    return temperature - middle;
}

/// Bacteria work before or after the yeast, at a temperature that the recipe's fermentation does not speak
/// of.
bool keeps_the_stated_temperature(const YeastClass& yeast) {
    return !yeast.lactic && !yeast.brettanomyces;
}

Estimate<double> esters_of(const YeastClass& yeast, const Process& process,
                           const Estimate<SpecificGravity>& original_gravity, Deviates& deviates) {
    const auto usual = draw_level("esters of " + yeast.name, yeast.ester, deviates);
    const TemperatureDifference warmer = keeps_the_stated_temperature(yeast)
                                             ? above_middle_of(yeast, process.fermentation_temperature)
                                             : 0.0 * kelvin;
    const std::vector<double>& thermometer = deviates.of("fermentation temperature");
    std::vector<double> levels;
    levels.reserve(deviates.draws());
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        const TemperatureDifference off =
            process.fermentation_temperature_half_width * (thermometer[draw] / Deviates::eight_in_ten);
        levels.push_back(ester_level(usual[draw], warmer + off, original_gravity[draw]));
    }
    return Estimate<double>(std::move(levels));
}

}  // namespace

double ester_level(double usual_level, TemperatureDifference above_middle, SpecificGravity original_gravity) {
    constexpr double per_kelvin = 0.18;
    constexpr double most_by_temperature = 2.5;
    constexpr double strong_from = 1.060;
    constexpr double per_gravity = 20.0;
    constexpr double most_by_gravity = 1.2;
    const double warmth = std::clamp(per_kelvin * in(above_middle, kelvin), -1.5, most_by_temperature);
    const double strength = std::clamp(per_gravity * (in(original_gravity, specific_gravity) - strong_from),
                                       0.0, most_by_gravity);
    return std::clamp(usual_level + warmth + strength, 0.0, strongest);
}

YeastCharacter yeast_character(const Process& process, const Estimate<SpecificGravity>& original_gravity,
                               const Estimate<Concentration>& acid, Deviates& deviates) {
    const Estimate<double> nothing = none(deviates.draws());
    YeastCharacter character{nothing, nothing, nothing, nothing, nothing, nothing};
    const auto level = [&](const char* what, const YeastClass& yeast, const LevelSpan& span) {
        return draw_level(what + yeast.name, span, deviates);
    };
    for (const YeastAddition& addition : process.yeasts) {
        const YeastClass& yeast = addition.yeast;
        character.ester = stronger(character.ester, esters_of(yeast, process, original_gravity, deviates));
        character.phenol = stronger(character.phenol, level("phenols of ", yeast, yeast.phenol));
        character.diacetyl = stronger(character.diacetyl, level("diacetyl of ", yeast, yeast.diacetyl));
        character.sulfur = stronger(character.sulfur, level("sulfur of ", yeast, yeast.sulfur));
        const bool mixed = yeast.lactic && yeast.brettanomyces;
        if (yeast.lactic) {
            const LevelSpan& span = mixed ? sourness_of_mixed_culture : sourness_of_lactic_culture;
            character.sour = stronger(character.sour, level("acid of ", yeast, span));
        }
        if (yeast.brettanomyces) {
            const LevelSpan& span = mixed ? funk_of_mixed_culture : funk_of_brettanomyces;
            character.funk = stronger(character.funk, level("funk of ", yeast, span));
        }
    }
    const auto tasted = [](Concentration malt) {
        return std::clamp((in(malt, gram_per_liter) - acid_malt_free_to) / acid_malt_per_step, 0.0,
                          strongest);
    };
    character.sour = stronger(character.sour, lift(tasted, acid));
    return character;
}

}  // namespace entrywise

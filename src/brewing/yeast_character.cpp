#include "brewing/yeast_character.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "base/piecewise.hpp"
#include "brewing/acidity.hpp"
#include "brewing/conditioning.hpp"
#include "brewing/ferulic_rest.hpp"
#include "brewing/fusel.hpp"
#include "brewing/maturation.hpp"
#include "brewing/pitching.hpp"

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

/// How far the fermentation really was from the temperature taken for it, draw by draw.
std::vector<TemperatureDifference> thermometer_off(const Process& process, Deviates& deviates) {
    std::vector<TemperatureDifference> off;
    off.reserve(deviates.draws());
    for (const double deviate : deviates.of("fermentation temperature")) {
        off.push_back(process.fermentation_temperature_half_width * (deviate / Deviates::eight_in_ten));
    }
    return off;
}

Estimate<double> esters_of(const YeastAddition& addition, const Process& process,
                           const Estimate<SpecificGravity>& original_gravity, Deviates& deviates) {
    const YeastClass& yeast = addition.yeast;
    const auto usual = draw_level("esters of " + yeast.name, yeast.ester, deviates);
    const TemperatureDifference warmer = keeps_the_stated_temperature(yeast)
                                             ? above_middle_of(yeast, process.fermentation_temperature)
                                             : 0.0 * kelvin;
    const Estimate<TemperatureDifference> off(thermometer_off(process, deviates));
    const double pitch = pitch_doublings(addition);
    return lift([&](double level, TemperatureDifference by,
                    SpecificGravity gravity) { return ester_level(level, warmer + by, gravity, pitch); },
                usual, off, original_gravity);
}

Estimate<double> fusels_of(const YeastAddition& addition, const Process& process,
                           const Estimate<SpecificGravity>& original_gravity, Deviates& deviates) {
    const TemperatureDifference above =
        keeps_the_stated_temperature(addition.yeast)
            ? process.fermentation_temperature - addition.yeast.temperature.high
            : -process.fermentation_temperature_half_width;
    const Estimate<TemperatureDifference> off(thermometer_off(process, deviates));
    const double pitch = pitch_doublings(addition);
    return lift([&](TemperatureDifference by,
                    SpecificGravity gravity) { return fusel_level(above + by, pitch, gravity); },
                off, original_gravity);
}

Maturation maturation_of(const YeastAddition& addition, const Process& process) {
    return {.fermentation = addition.yeast.fermentation,
            .on_yeast = process.fermentation_time,
            .rest = process.diacetyl_rest,
            .conditioned = process.conditioning.time,
            .cold_weeks = weeks_cold(process.conditioning),
            .pitch_doublings = pitch_doublings(addition)};
}

Estimate<double> moved(const Estimate<double>& level, double factor, double change) {
    return lift([=](double usual) { return std::clamp(factor * usual + change, 0.0, strongest); }, level);
}

/// What slow yeasts and bacteria have done of their work; all of it where the recipe gives them no time.
double slow_work_done(const YeastClass& yeast, const Process& process) {
    const bool time_is_stated = process.fermentation_time || process.conditioning.time;
    return yeast.brettanomyces && time_is_stated ? slow_growth(process.fermentation_time.value_or(0.0 * day) +
                                                               process.conditioning.time.value_or(0.0 * day))
                                                 : 1.0;
}

/// Sourness of acid malt and of the acids among the extras together.
Estimate<double> sourness_of_additions(const Process& process, const Wort& wort,
                                       const Estimate<Concentration>& acid_malt) {
    const auto tasted = [](Concentration malt, Concentration acid) {
        const double by_malt =
            std::max((in(malt, gram_per_liter) - acid_malt_free_to) / acid_malt_per_step, 0.0);
        return std::min(by_malt + sourness_of_acid(acid), strongest);
    };
    return lift(tasted, acid_malt, added_acid(process, wort));
}

}  // namespace

double ester_level(double usual_level, TemperatureDifference above_middle, SpecificGravity original_gravity,
                   double pitch_doublings) {
    constexpr double per_kelvin = 0.18;
    constexpr double most_by_temperature = 2.5;
    constexpr double strong_from = 1.055;
    constexpr double per_gravity = 30.0;
    constexpr double most_by_gravity = 1.5;
    constexpr double per_halved_pitch = 0.5;
    constexpr double per_doubled_pitch = 0.4;
    const double warmth = std::clamp(per_kelvin * in(above_middle, kelvin), -1.5, most_by_temperature);
    const double strength = std::clamp(per_gravity * (in(original_gravity, specific_gravity) - strong_from),
                                       0.0, most_by_gravity);
    const double hunger = pitch_doublings < 0.0 ? per_halved_pitch : per_doubled_pitch;
    return std::clamp(usual_level + warmth + strength - hunger * pitch_doublings, 0.0, strongest);
}

double slow_growth(Duration since_pitching) {
    constexpr std::array<Corner, 3> by_weeks{{{0.0, 0.5}, {26.0, 1.0}, {52.0, 1.2}}};
    return on_line_through(by_weeks, in(since_pitching, week));
}

YeastCharacter yeast_character(const Process& process, const Wort& wort,
                               const Estimate<Concentration>& acid_malt, Deviates& deviates) {
    const Estimate<double> nothing = none(deviates.draws());
    const Estimate<SpecificGravity>& original_gravity = wort.original_gravity.total;
    YeastCharacter character{nothing, nothing, nothing, nothing, nothing, nothing, nothing};
    const auto level = [&](const char* what, const YeastClass& yeast, const LevelSpan& span) {
        return draw_level(what + yeast.name, span, deviates);
    };
    for (const YeastAddition& addition : process.yeasts) {
        const YeastClass& yeast = addition.yeast;
        const Maturation maturation = maturation_of(addition, process);
        const double by_rest = yeast.phenolic ? phenol_from_ferulic_rest(process.mash) : 0.0;
        character.ester = stronger(character.ester, esters_of(addition, process, original_gravity, deviates));
        character.fusel = stronger(character.fusel, fusels_of(addition, process, original_gravity, deviates));
        character.phenol =
            stronger(character.phenol, moved(level("phenols of ", yeast, yeast.phenol), 1.0, by_rest));
        character.diacetyl = stronger(character.diacetyl, moved(level("diacetyl of ", yeast, yeast.diacetyl),
                                                                1.0, diacetyl_change(maturation)));
        character.sulfur = stronger(character.sulfur, moved(level("sulfur of ", yeast, yeast.sulfur),
                                                            sulfur_factor(maturation), 0.0));
        const bool mixed = yeast.lactic && yeast.brettanomyces;
        const double done = slow_work_done(yeast, process);
        if (yeast.lactic) {
            const LevelSpan& span = mixed ? sourness_of_mixed_culture : sourness_of_lactic_culture;
            character.sour = stronger(character.sour, moved(level("acid of ", yeast, span), done, 0.0));
        }
        if (yeast.brettanomyces) {
            const LevelSpan& span = mixed ? funk_of_mixed_culture : funk_of_brettanomyces;
            character.funk = stronger(character.funk, moved(level("funk of ", yeast, span), done, 0.0));
        }
    }
    character.sour = stronger(character.sour, sourness_of_additions(process, wort, acid_malt));
    return character;
}

}  // namespace entrywise

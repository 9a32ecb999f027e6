#include "advice/trial.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "advice/level_in.hpp"
#include "base/number.hpp"
#include "brewing/ingredient_line.hpp"
#include "brewing/process.hpp"

namespace entrywise {

namespace {

TemperatureDifference temperature_step(const Measures& measures) {
    return measures.fahrenheit ? 4.0 * fahrenheit_degree : 2.0 * kelvin;
}

constexpr Attenuation attenuation_step = 0.05 * fully_attenuated;
constexpr Duration boil_step = 15.0 * minute;
constexpr Duration cold_step = 7.0 * day;
constexpr Carbonation carbonation_step = 0.3 * volume_of_co2;

/// Changes below these are nothing: a twentieth of a step of a scale, a tenth of an SRM (working values).
constexpr double least_level_change = 0.05;
constexpr double least_color_change = 0.1;

bool is_of_strength(const std::string& attribute) {
    return attribute == "alcohol" || attribute == "warmth";
}

/// Whether bitterness is so strong that the scale has no more words for it.
bool is_at_the_top(const Tasting& tasting) {
    constexpr double nearly = 0.1;
    const double top = static_cast<double>(words_of(SensoryScale::intensity).size() - 1);
    return tasting.profile.level[Attribute::flavor_bitterness].median() > top - nearly;
}

/// The fermentable that the others give way to: the most of base malt or extract, or of anything.
std::size_t main_fermentable(const std::vector<GristAddition>& grist) {
    const auto weight = [](const GristAddition& addition) {
        const bool carries = addition.fermentable.kind == FermentableKind::base ||
                             addition.fermentable.kind == FermentableKind::malt_extract;
        return std::pair(carries, addition.mass);
    };
    const auto most = std::max_element(
        grist.begin(), grist.end(),
        [&](const auto& first, const auto& second) { return weight(first) < weight(second); });
    return static_cast<std::size_t>(most - grist.begin());
}

/// How much extract an addition brings into the wort.
Mass extract_of(const GristAddition& addition, Share efficiency) {
    const Fermentable& fermentable = addition.fermentable;
    const double dry = 1.0 - in(fermentable.moisture.middle, whole);
    const bool is_mashed = needs_a_mash(fermentable.kind) && addition.use == GristUse::mash;
    const double won = is_mashed ? in(efficiency, whole) : 1.0;
    return addition.mass * (in(fermentable.extract.middle, whole) * dry * won);
}

/// A yeast that gives nothing but alcohol.
YeastClass cleaned(YeastClass yeast) {
    yeast.ester = {};
    yeast.phenol = {};
    yeast.sulfur = {};
    yeast.diacetyl = {};
    yeast.phenolic = yeast.lactic = yeast.brettanomyces = yeast.haze_positive = false;
    return yeast;
}

}  // namespace

Trials::Trials(const Recipe& recipe, const Perception& perception)
    : recipe_(recipe), perception_(perception) {
    recipe_.measured = {};
    as_it_is_ = taste(recipe_, perception_, 1);
    add_grist();
    add_hops_and_extras();
    add_yeasts();
    add_settings();
}

void Trials::add(const Recipe& changed, Pull pull, Asked asked) {
    trials_.push_back({std::move(pull), asked, taste(changed, perception_, 1)});
}

void Trials::add_grist() {
    if (recipe_.grist.size() < 2) {
        for (const GristAddition& only : recipe_.grist) {
            Recipe changed = recipe_;
            changed.grist.front().mass = 0.5 * only.mass;
            add(changed, {only.fermentable.name, "half the " + only.fermentable.name, true});
        }
        return;
    }
    const Share efficiency = process_of(recipe_).efficiency.middle;
    const std::size_t main = main_fermentable(recipe_.grist);
    for (std::size_t index = 0; index < recipe_.grist.size(); ++index) {
        const std::string& name = recipe_.grist[index].fermentable.name;
        Recipe without = recipe_;
        without.grist.erase(without.grist.begin() + static_cast<std::ptrdiff_t>(index));
        const Pull pull{name, "without " + name, true};
        add(without, pull, index == main ? Asked::always : Asked::of_strength);
        if (index != main) {
            Recipe exchanged = recipe_;
            GristAddition& base = exchanged.grist[main];
            const Mass extract = extract_of(base, efficiency);
            const Mass more = extract_of(recipe_.grist[index], efficiency);
            if (extract.value() > 0.0) {
                base.mass *= in(extract + more, extract);
            }
            exchanged.grist.erase(exchanged.grist.begin() + static_cast<std::ptrdiff_t>(index));
            add(exchanged, pull, Asked::of_character);
        }
    }
}

void Trials::add_hops_and_extras() {
    for (std::size_t index = 0; index < recipe_.hops.size(); ++index) {
        Recipe without = recipe_;
        without.hops.erase(without.hops.begin() + static_cast<std::ptrdiff_t>(index));
        const std::string line = line_of(recipe_.hops[index]);
        add(without, {line, "without " + line, true});
    }
    for (std::size_t index = 0; index < recipe_.extras.size(); ++index) {
        Recipe without = recipe_;
        without.extras.erase(without.extras.begin() + static_cast<std::ptrdiff_t>(index));
        const std::string& name = recipe_.extras[index].name;
        add(without, {name, "without " + name, true});
    }
}

void Trials::add_yeasts() {
    for (std::size_t index = 0; index < recipe_.yeasts.size(); ++index) {
        Recipe clean = recipe_;
        clean.yeasts[index].yeast = cleaned(clean.yeasts[index].yeast);
        add(clean, {recipe_.yeasts[index].yeast.name + " yeast", "a clean yeast", true});
    }
}

void Trials::add_settings() {
    const Process process = process_of(recipe_);
    const TemperatureDifference degrees = temperature_step(recipe_.measures);
    const std::string step = told(degrees, recipe_.measures);
    // Each setting both ways; words of what grows and what shrinks it.
    const auto both_ways = [&](const std::string& source, const std::string& more, const std::string& less,
                               auto change) {
        for (const double sign : {1.0, -1.0}) {
            Recipe changed = recipe_;
            change(changed, sign);
            add(changed, {source, source + ' ' + (sign > 0.0 ? more : less), false});
        }
    };
    if (process.mashed) {
        both_ways("mash", step + " warmer", step + " cooler", [&](Recipe& changed, double sign) {
            changed.mash = process.mash;
            for (MashRest& rest : changed.mash) {
                rest.temperature += sign * degrees;
            }
        });
    }
    both_ways("attenuation", "5 points higher", "5 points lower", [&](Recipe& changed, double sign) {
        changed.yeasts = process.yeasts;
        for (YeastAddition& addition : changed.yeasts) {
            addition.yeast.attenuation.middle += sign * attenuation_step;
        }
    });
    both_ways("fermentation", step + " warmer", step + " cooler", [&](Recipe& changed, double sign) {
        changed.fermentation_temperature = process.fermentation_temperature + sign * degrees;
    });
    both_ways("carbonation", "0.3 vol higher", "0.3 vol lower", [&](Recipe& changed, double sign) {
        const Carbonation moved = process.carbonation.middle + sign * carbonation_step;
        changed.conditioning.carbonation = {std::max(moved, Carbonation()), process.carbonation.half_width};
    });
    both_ways("boil", "15 min longer", "15 min shorter", [&](Recipe& changed, double sign) {
        changed.boil.time = std::max(process.boil_time + sign * boil_step, 0.0 * minute);
        for (HopAddition& addition : changed.hops) {
            if (addition.use == HopUse::boil && addition.time) {
                addition.time = std::min(*addition.time, *changed.boil.time);
            }
        }
    });
    both_ways("cold storage", "a week longer", "a week shorter", [&](Recipe& changed, double sign) {
        const Duration usual = process.conditioning.time.value_or(0.0 * day);
        changed.conditioning.time = std::max(usual + sign * cold_step, 0.0 * day);
    });
}

std::vector<Pull> Trials::that_move(Section section, const std::string& attribute,
                                    Direction direction) const {
    const bool off_the_scale = attribute == "bitterness" && is_at_the_top(as_it_is_);
    const auto level_of = [&](const Tasting& tasting) {
        return off_the_scale ? in(tasting.beer.bitterness.total.median(), ibu)
                             : level_in(tasting, section, attribute);
    };
    const double level = level_of(as_it_is_);
    const Asked other = is_of_strength(attribute) ? Asked::of_character : Asked::of_strength;
    const double least = attribute == "color" ? least_color_change : least_level_change;
    std::vector<Pull> pulls;
    double all = 0.0;
    for (const Trial& trial : trials_) {
        Pull pull = trial.pull;
        pull.change = level_of(trial.tasting) - level;
        const bool right_way = direction == Direction::above ? pull.change >= least : pull.change <= -least;
        if (trial.asked != other && std::isfinite(pull.change) && right_way) {
            all += std::abs(pull.change);
            pulls.push_back(std::move(pull));
        }
    }
    for (Pull& pull : pulls) {
        pull.share = std::abs(pull.change) / all;
    }
    std::stable_sort(pulls.begin(), pulls.end(),
                     [](const Pull& first, const Pull& second) { return first.share > second.share; });
    return pulls;
}

}  // namespace entrywise

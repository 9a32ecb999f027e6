#include "advice/cause.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/number.hpp"
#include "quantity/printed_precision.hpp"
#include "quantity/text.hpp"
#include "sensing/appearance.hpp"
#include "sensing/palate.hpp"

namespace entrywise {

namespace {

std::string gravity(const Estimate<SpecificGravity>& estimate) {
    return fixed(in(estimate.median(), specific_gravity), specific_gravity_decimals);
}

std::string numbers_behind_sweetness(const Beer& beer) {
    return "final gravity " + gravity(beer.final_gravity) + ", " +
           fixed(100.0 * in(beer.apparent_attenuation.median(), fully_attenuated),
                 attenuation_percent_decimals) +
           " % attenuation";
}

std::string alcohol_of(const Beer& beer) {
    return fixed(in(beer.alcohol.median(), percent_by_volume), alcohol_decimals) +
           " % alcohol from an original gravity of " + gravity(beer.original_gravity.total);
}

std::string strength_against_foam(const Beer& beer) {
    return beer.alcohol.median() > alcohol_that_foam_bears ? alcohol_of(beer) : std::string();
}

std::string sourness_against_foam(const Beer& beer) {
    constexpr double noticeable = 1.0;
    return beer.drivers.sour.median() >= noticeable ? "sourness" : std::string();
}

std::string adjuncts_against_foam(const Beer& beer) {
    const double share = beer.drivers.adjunct_share;
    return share > adjuncts_that_foam_bears
               ? fixed(100.0 * share, 0) + " % of the extract from sugar, corn or rice"
               : std::string();
}

std::string bitterness_against_malt(const Beer& beer) {
    return fixed(in(beer.bitterness.total.median(), ibu), bitterness_decimals) +
           " IBU on an original gravity of " + gravity(beer.original_gravity.total);
}

std::string mash_of(const Recipe& recipe) {
    if (recipe.mash.empty()) {
        return {};
    }
    std::vector<std::string> rests;
    for (const MashRest& rest : recipe.mash) {
        rests.push_back(told(rest.temperature, recipe.measures));
    }
    std::string text = "mash at " + rests.front();
    for (std::size_t rest = 1; rest < rests.size(); ++rest) {
        text += ", " + rests[rest];
    }
    return text;
}

std::string fermentation_of(const Recipe& recipe) {
    std::string text;
    for (const YeastAddition& addition : recipe.yeasts) {
        text += (text.empty() ? "yeast: " : ", ") + addition.yeast.name;
    }
    if (recipe.fermentation_temperature && !text.empty()) {
        text += " at " + told(*recipe.fermentation_temperature, recipe.measures);
    }
    return text;
}

std::string carbonation_words(const Beer& beer) {
    return "carbonation " + fixed(in(beer.carbonation.median(), volume_of_co2), carbonation_decimals) +
           " vol";
}

std::string settling_of(const Beer& beer) {
    const Drivers& drivers = beer.drivers;
    const std::string yeast = drivers.flocculation == Flocculation::low      ? "yeast that settles badly"
                              : drivers.flocculation == Flocculation::medium ? "yeast that settles fairly"
                                                                             : "yeast that settles well";
    const std::string weeks = fixed(drivers.cold_weeks, 0);
    const std::string cold = weeks == "0"   ? "hardly any time in the cold"
                             : weeks == "1" ? "a week in the cold"
                                            : weeks + " weeks in the cold";
    return yeast + (drivers.filtered ? ", filtered, " : ", ") + cold;
}

std::vector<std::string> all_settings_behind(const std::string& attribute, const Recipe& recipe,
                                             const Beer& beer) {
    if (attribute == "bitterness" || attribute == "balance") {
        return {bitterness_against_malt(beer)};
    }
    if (attribute == "finish" || attribute == "sweetness" || attribute == "body") {
        return {numbers_behind_sweetness(beer), mash_of(recipe), carbonation_words(beer)};
    }
    if (attribute == "alcohol" || attribute == "warmth") {
        return {alcohol_of(beer)};
    }
    if (attribute == "ester" || attribute == "phenol" || attribute == "sour" || attribute == "funk" ||
        attribute == "diacetyl" || attribute == "sulfur") {
        return {fermentation_of(recipe)};
    }
    if (attribute == "head_retention") {
        return {carbonation_words(beer), strength_against_foam(beer), adjuncts_against_foam(beer),
                sourness_against_foam(beer)};
    }
    if (attribute == "carbonation" || attribute == "head_size" || attribute == "creaminess") {
        return {carbonation_words(beer)};
    }
    if (attribute == "clarity") {
        return {settling_of(beer)};
    }
    return {};
}

/// The sources of two drivers that one attribute comes of, by how much of it each driver brings.
std::vector<SourceShare> both_sources(const std::vector<SourceShare>& first, double by_first,
                                      const std::vector<SourceShare>& second, double by_second) {
    const double all = by_first + by_second;
    std::vector<SourceShare> sources;
    const auto add = [&sources, all](SourceShare source, double part) {
        source.share *= all > 0.0 ? part / all : 0.0;
        sources.push_back(std::move(source));
    };
    std::for_each(first.begin(), first.end(), [&](const SourceShare& source) { add(source, by_first); });
    std::for_each(second.begin(), second.end(), [&](const SourceShare& source) { add(source, by_second); });
    std::erase_if(sources, [](const SourceShare& source) { return source.share <= 0.0; });
    std::stable_sort(sources.begin(), sources.end(), [](const SourceShare& one, const SourceShare& other) {
        return one.share > other.share;
    });
    return sources;
}

std::vector<SourceShare> sources_of_astringency(const Drivers& drivers) {
    const Concentration none;
    return both_sources(drivers.roast.sources, astringency_level(drivers.roast.total.median(), none),
                        drivers.dry_hops.sources, astringency_level(none, drivers.dry_hops.total.median()));
}

std::vector<SourceShare> sources_of_creaminess(const Drivers& drivers) {
    constexpr double thin = 0.0;
    constexpr Carbonation still = 0.0 * volume_of_co2;
    const Concentration none;
    const Concentration grain = drivers.grain_body.total.median();
    const Concentration lactose = drivers.lactose.total.median();
    return both_sources(drivers.grain_body.sources, creaminess_level(thin, grain, none, still, false),
                        drivers.lactose.sources, creaminess_level(thin, none, lactose, still, false));
}

std::string share_in_words(const SourceShare& source) {
    return source.ingredient + " " + fixed(100.0 * source.share, 0) + " %";
}

}  // namespace

std::vector<std::string> settings_behind(const std::string& attribute, const Recipe& recipe,
                                         const Beer& beer) {
    std::vector<std::string> settings = all_settings_behind(attribute, recipe, beer);
    std::erase(settings, std::string());
    return settings;
}

std::vector<SourceShare> sources_of(const Finding& finding, const Beer& beer) {
    const Drivers& drivers = beer.drivers;
    const std::string& attribute = finding.attribute;
    if (attribute == "bitterness" || attribute == "balance") {
        return beer.bitterness.sources;
    }
    if (attribute == "hop") {
        return finding.section == Section::aroma ? drivers.hop_aroma.sources : drivers.hop_flavor.sources;
    }
    if (attribute == "malt") {
        return drivers.malt.sources;
    }
    if (attribute == "toast") {
        return drivers.toast.sources;
    }
    if (attribute == "caramel") {
        return drivers.caramel.sources;
    }
    if (attribute == "roast") {
        return drivers.roast.sources;
    }
    if (attribute == "astringency") {
        return sources_of_astringency(drivers);
    }
    if (attribute == "creaminess") {
        return sources_of_creaminess(drivers);
    }
    if (attribute == "head_size" || attribute == "head_retention") {
        return drivers.grain_head.sources;
    }
    if (attribute == "smoke") {
        return drivers.smoke.sources;
    }
    if (attribute == "color") {
        return beer.color.sources;
    }
    if (attribute == "clarity") {
        return drivers.grain_haze.sources;
    }
    if (attribute == "spice") {
        return drivers.spice.sources;
    }
    if (attribute == "salt") {
        return drivers.salt.sources;
    }
    if (attribute == "dms") {
        return drivers.dms_precursor.sources;
    }
    if (attribute == "alcohol" || attribute == "warmth") {
        return beer.original_gravity.sources;
    }
    return {};
}

std::vector<std::string> causes_of(const Finding& finding, const Recipe& recipe, const Beer& beer) {
    std::vector<std::string> causes = settings_behind(finding.attribute, recipe, beer);
    for (const SourceShare& source : sources_of(finding, beer)) {
        if (causes.size() < most_causes + 1 && source.share >= least_share_of_a_cause) {
            causes.push_back(share_in_words(source));
        }
    }
    if (causes.empty() && finding.direction == Direction::below) {
        causes.emplace_back("nothing in the recipe gives it");
    }
    return causes;
}

}  // namespace entrywise

#include "advice/cause.hpp"

#include <algorithm>
#include <cmath>

#include "base/number.hpp"
#include "quantity/printed_precision.hpp"
#include "quantity/text.hpp"

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
        rests.push_back(fixed(in_celsius(rest.temperature), 0) + " °C");
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
        text += " at " + fixed(in_celsius(*recipe.fermentation_temperature), 0) + " °C";
    }
    return text;
}

std::string carbonation_of(const Beer& beer) {
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
        return {numbers_behind_sweetness(beer), mash_of(recipe), carbonation_of(beer)};
    }
    if (attribute == "alcohol" || attribute == "warmth") {
        return {alcohol_of(beer)};
    }
    if (attribute == "ester" || attribute == "phenol" || attribute == "sour" || attribute == "funk" ||
        attribute == "diacetyl" || attribute == "sulfur") {
        return {fermentation_of(recipe)};
    }
    if (attribute == "carbonation" || attribute == "head_size" || attribute == "head_retention" ||
        attribute == "creaminess") {
        return {carbonation_of(beer)};
    }
    if (attribute == "clarity") {
        return {settling_of(beer)};
    }
    return {};
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
    if (attribute == "roast" || attribute == "astringency") {
        return drivers.roast.sources;
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

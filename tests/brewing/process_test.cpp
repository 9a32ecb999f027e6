#include "brewing/process.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

bool mentions(const std::vector<std::string>& lines, const std::string& word) {
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.find(word) != std::string::npos; });
}

std::vector<std::string> names_in_order(const Process& process) {
    std::vector<std::string> names;
    for (const GristAddition& addition : process.grist) {
        names.push_back(addition.fermentable.name);
    }
    return names;
}

}  // namespace

TEST_CASE("a recipe that states everything leaves nothing to assume") {
    CHECK(process_of(pale_ale()).assumptions.empty());
}

TEST_CASE("each thing that a recipe leaves open is listed as an assumption") {
    const auto assumed_without = [](auto leave_out) {
        Recipe recipe = pale_ale();
        leave_out(recipe);
        return process_of(recipe).assumptions;
    };
    const auto without_efficiency = assumed_without([](Recipe& recipe) { recipe.efficiency.reset(); });
    const auto without_mash = assumed_without([](Recipe& recipe) { recipe.mash.clear(); });
    const auto without_boil = assumed_without([](Recipe& recipe) { recipe.boil.time.reset(); });
    const auto without_gas = assumed_without([](Recipe& recipe) { recipe.conditioning.carbonation.reset(); });
    const auto without_warmth =
        assumed_without([](Recipe& recipe) { recipe.fermentation_temperature.reset(); });
    const auto without_yeast = assumed_without([](Recipe& recipe) { recipe.yeasts.clear(); });
    CHECK(mentions(without_efficiency, "efficiency"));
    CHECK(mentions(without_mash, "mash"));
    CHECK(mentions(without_boil, "boil"));
    CHECK(mentions(without_gas, "carbonation"));
    CHECK(mentions(without_warmth, "fermentation"));
    CHECK(mentions(without_yeast, "yeast"));
    CHECK(without_efficiency.size() == 1);
    CHECK(without_mash.size() == 1);
    CHECK(without_boil.size() == 1);
    CHECK(without_gas.size() == 1);
    CHECK(without_warmth.size() == 1);
}

TEST_CASE("a mash rest without a time is listed with the time taken for it") {
    Recipe recipe = pale_ale();
    recipe.mash.front().time_is_stated = false;
    const auto assumptions = process_of(recipe).assumptions;
    REQUIRE(assumptions.size() == 1);
    CHECK(mentions(assumptions, "66 °C"));
    CHECK(mentions(assumptions, "60 min"));
}

TEST_CASE("a lager that tells neither rest nor lagering is taken to have had both, an ale needs neither") {
    Recipe recipe = pale_ale();
    recipe.yeasts.front().yeast.fermentation = Fermentation::bottom;
    CHECK(mentions(process_of(recipe).assumptions, "lagering"));
    Recipe lagered = recipe;
    lagered.conditioning.time = 5.0 * week;
    CHECK(process_of(lagered).assumptions.empty());
    Recipe rested = recipe;
    rested.diacetyl_rest = DiacetylRest{celsius(17.0), 2.0 * day};
    CHECK(process_of(rested).assumptions.empty());
}

TEST_CASE("slow yeasts and bacteria are given half a year where the recipe gives them no time") {
    Recipe recipe = pale_ale();
    recipe.yeasts.front().yeast.brettanomyces = true;
    CHECK(mentions(process_of(recipe).assumptions, "half a year"));
    recipe.conditioning.time = 30.0 * week;
    CHECK(process_of(recipe).assumptions.empty());
}

TEST_CASE("dates without a temperature leave open how the beer was kept") {
    Recipe recipe = pale_ale();
    recipe.keeping.packaged = std::chrono::sys_days(std::chrono::year(2026) / 10 / 1);
    CHECK_FALSE(process_of(recipe).age);
    recipe.keeping.judged = std::chrono::sys_days(std::chrono::year(2026) / 11 / 14);
    const Process process = process_of(recipe);
    REQUIRE(process.age);
    CHECK(within(in(*process.age, day), 44.0, 1e-9));
    CHECK(mentions(process.assumptions, "kept"));
    recipe.keeping.temperature = celsius(4.0);
    CHECK(process_of(recipe).assumptions.empty());
    CHECK(process_of(recipe).kept_at.half_width < process.kept_at.half_width);
    // Common practice: from a refrigerator, at 4 to 8 °C, to a room, at 20 to 22 °C.
    CHECK(within(in_celsius(process.kept_at.middle - process.kept_at.half_width), 6.0, 2.0));
    CHECK(within(in_celsius(process.kept_at.middle + process.kept_at.half_width), 21.0, 1.0));
}

TEST_CASE("what was measured need not be assumed") {
    Recipe recipe = pale_ale();
    recipe.efficiency.reset();
    recipe.conditioning.carbonation.reset();
    recipe.measured.original_gravity =
        Uncertain<SpecificGravity>{1.052 * specific_gravity, 0.0 * specific_gravity};
    recipe.measured.carbonation = Uncertain<Carbonation>{2.3 * volume_of_co2, 0.0 * volume_of_co2};
    CHECK(process_of(recipe).assumptions.empty());
}

TEST_CASE("an extract brew assumes neither efficiency nor mash") {
    Recipe recipe = pale_ale();
    recipe.efficiency.reset();
    recipe.mash.clear();
    recipe.mashed = false;
    recipe.grist = {grist(pale_malt_extract(), 3.0, GristUse::boil)};
    CHECK(process_of(recipe).assumptions.empty());
}

// Common practice: mash near 66 °C, boil an hour, brewhouse efficiency 65 to 80 %, 2.2 to 2.7 volumes.
TEST_CASE("defaults are those of common practice") {
    Recipe recipe = pale_ale();
    recipe.efficiency.reset();
    recipe.mash.clear();
    recipe.boil = {};
    recipe.conditioning.carbonation.reset();
    const Process process = process_of(recipe);
    CHECK(process.efficiency.middle >= 65.0 * percent);
    CHECK(process.efficiency.middle <= 80.0 * percent);
    CHECK(process.boil_time == 60.0 * minute);
    REQUIRE(process.mash.size() == 1);
    CHECK(within(in_celsius(process.mash.front().temperature), 66.0, 1.5));
    CHECK(process.mash.front().time == 60.0 * minute);
    CHECK(process.carbonation.middle >= 2.2 * volume_of_co2);
    CHECK(process.carbonation.middle <= 2.7 * volume_of_co2);
    CHECK(process.carbonation.middle - process.carbonation.half_width >= 2.1 * volume_of_co2);
    CHECK(process.carbonation.middle + process.carbonation.half_width <= 2.8 * volume_of_co2);
    // Small open kettles boil off 3 to 5 L an hour of a batch of some 20 to 30 L (common practice).
    CHECK(in(process.evaporation.middle, liter_per_hour) >= 1.2);
    CHECK(in(process.evaporation.middle, liter_per_hour) <= 5.0);
}

TEST_CASE("a default is less certain than a stated value") {
    Recipe open = pale_ale();
    open.efficiency.reset();
    open.mash.clear();
    open.boil = {};
    open.fermentation_temperature.reset();
    open.conditioning.carbonation.reset();
    const Process assumed = process_of(open);
    const Process stated = process_of(pale_ale());
    CHECK(assumed.efficiency.half_width > stated.efficiency.half_width);
    CHECK(assumed.mash_temperature_half_width > stated.mash_temperature_half_width);
    CHECK(assumed.fermentation_temperature_half_width > stated.fermentation_temperature_half_width);
    CHECK(assumed.carbonation.half_width > stated.carbonation.half_width);
}

TEST_CASE("a stated spread holds") {
    Recipe recipe = pale_ale();
    recipe.efficiency = Uncertain<Share>{70.0 * percent, 1.0 * percent};
    recipe.volume.half_width = 0.1 * liter;
    recipe.conditioning.carbonation = Uncertain<Carbonation>{2.4 * volume_of_co2, 0.05 * volume_of_co2};
    const Process process = process_of(recipe);
    CHECK(process.efficiency.half_width == 1.0 * percent);
    CHECK(process.volume.half_width == 0.1 * liter);
    CHECK(process.carbonation.half_width == 0.05 * volume_of_co2);
}

TEST_CASE("additions stand in an order of their own") {
    Recipe recipe = pale_ale();
    recipe.grist.push_back(grist(sucrose(), 0.2, GristUse::boil));
    const auto names = names_in_order(process_of(recipe));
    std::sort(
        recipe.grist.begin(), recipe.grist.end(),
        [](const GristAddition& first, const GristAddition& second) { return first.mass < second.mass; });
    CHECK(names_in_order(process_of(recipe)) == names);
}

TEST_CASE("bacteria alone make no beer: a clean yeast is assumed beside them") {
    Recipe recipe = pale_ale();
    recipe.yeasts.front().yeast.name = "lactic bacteria";
    recipe.yeasts.front().yeast.lactic = true;
    const Process process = process_of(recipe);
    REQUIRE(process.yeasts.size() == 2);
    CHECK(mentions(process.assumptions, "yeast"));
}

// A thermometer on a fermenter is read to a degree, and beer is not as warm everywhere (common practice).
TEST_CASE("a stated fermentation temperature is known to a degree") {
    CHECK(within(in(process_of(pale_ale()).fermentation_temperature_half_width, kelvin), 1.0, 0.1));
}

// Common practice: a clean yeast that is looked after leaves no butter, or hardly any.
TEST_CASE("any clean yeast leaves little diacetyl and sulfur, and esters from none to low") {
    const YeastClass yeast = any_yeast();
    CHECK(yeast.diacetyl.low == 0.0);
    CHECK(yeast.diacetyl.high <= 1.0);
    CHECK(yeast.sulfur.low == 0.0);
    CHECK(yeast.sulfur.high <= 1.0);
    CHECK(yeast.ester.low == 0.0);
    CHECK(yeast.ester.high <= 3.0);
    // Where nothing is known of it, a yeast is trusted with 10 to 12 % alcohol: common practice.
    CHECK(yeast.alcohol_limit >= 10.0 * percent_by_volume);
    CHECK(yeast.alcohol_limit <= 12.0 * percent_by_volume);
    CHECK(yeast.attenuation.middle >= 0.72 * fully_attenuated);
    CHECK(yeast.attenuation.middle <= 0.80 * fully_attenuated);
}

TEST_CASE("a fermentation whose temperature is not told is at the middle of its yeast's") {
    Recipe recipe = pale_ale();
    recipe.fermentation_temperature.reset();
    CHECK(within(in_celsius(process_of(recipe).fermentation_temperature), 19.0, 1e-9));
}

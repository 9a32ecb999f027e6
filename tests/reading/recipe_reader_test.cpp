#include "reading/recipe_reader.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <filesystem>
#include <string>

#include "base/file.hpp"
#include "reading/recipe_file.hpp"
#include "reading/yaml_document.hpp"
#include "tests/support/guide.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Outcome<Recipe> recipe_of(const std::string& text) {
    const auto document = yaml_document(text, "recipe");
    return document ? read_recipe(*document, usual_library().ingredients(), "recipe")
                    : Outcome<Recipe>(document.faults);
}

const std::string head = "format: entrywise/recipe/1\nname: Test\nvolume: 20 L\n";
const std::string grist = "grist:\n  - {malt: pale ale malt, mass: 5 kg}\n";

Recipe sound(const std::string& text) {
    const auto recipe = recipe_of(text);
    for (const Fault& fault : recipe.faults) {
        MESSAGE(to_line(fault));
    }
    REQUIRE(recipe);
    return *recipe;
}

}  // namespace

TEST_CASE("every amount of a recipe comes out as it was written") {
    const Recipe recipe = sound(
        "format: entrywise/recipe/1\n"
        "name: Slack Tide\n"
        "style: bjcp-2021/21A\n"
        "base_style: 18B\n"
        "declares: {strength: standard}\n"
        "volume: 20 L\n"
        "boil: {time: 90 min, evaporation: 3.5 L/h}\n"
        "efficiency: 72 %\n"
        "mash:\n"
        "  - {temperature: 66 C, time: 60 min}\n"
        "  - {temperature: 76 C}\n"
        "grist:\n"
        "  - {malt: pale ale malt, mass: 5.2 kg}\n"
        "  - {sugar: sucrose, mass: 400 g, add: boil}\n"
        "hops:\n"
        "  - {hop: Cascade, mass: 30 g, alpha: 5.5 %, add: boil, time: 60 min, form: whole}\n"
        "  - {hop: Cascade, mass: 40 g, add: whirlpool, temperature: 80 C, time: 20 min}\n"
        "  - {hop: Cascade, mass: 60 g, add: dry hop, time: 4 d}\n"
        "  - {hop: Cascade, mass: 5 g, add: first wort}\n"
        "extras:\n"
        "  - {name: coriander, kind: spice, mass: 15 g, add: boil, time: 5 min}\n"
        "yeast: {class: american ale, attenuation: 78 %, pitch: 0.75 M/mL/P}\n"
        "fermentation: {temperature: 19 C, time: 10 d, rest: {temperature: 21 C, time: 2 d}}\n"
        "conditioning: {carbonation: 2.5 vol, time: 21 d, temperature: 4 C, filtered: false, nitrogen: true, "
        "package: bottle}\n"
        "dates: {packaged: 2026-10-01, judged: 2026-11-14, kept: 4 C}\n"
        "measured: {original_gravity: 1.062, final_gravity: 1.011 +- 0.002, bitterness: 48 IBU, color: 9 "
        "SRM}\n");
    CHECK(recipe.name == "Slack Tide");
    CHECK(recipe.style == StyleName{"bjcp-2021", "21A"});
    CHECK(recipe.base_style == StyleName{"bjcp-2021", "18B"});
    CHECK(recipe.declares.at("strength") == "standard");
    CHECK(within(recipe.volume.middle / liter, 20.0, 1e-9));
    CHECK(within(*recipe.boil.time / minute, 90.0, 1e-9));
    CHECK(within(*recipe.boil.evaporation / liter_per_hour, 3.5, 1e-9));
    CHECK(within(recipe.efficiency->middle / percent, 72.0, 1e-9));
    CHECK(recipe.mashed);
    REQUIRE(recipe.mash.size() == 2);
    CHECK(within(in_celsius(recipe.mash[0].temperature), 66.0, 1e-9));
    CHECK(recipe.mash[0].time_is_stated);
    CHECK_FALSE(recipe.mash[1].time_is_stated);
    REQUIRE(recipe.grist.size() == 2);
    CHECK(recipe.grist[0].fermentable.name == "pale ale malt");
    CHECK(recipe.grist[0].use == GristUse::mash);
    CHECK(recipe.grist[0].position == Position{13, 5});
    CHECK(recipe.grist[1].use == GristUse::boil);
    CHECK(within(recipe.grist[1].mass / gram, 400.0, 1e-9));
    REQUIRE(recipe.hops.size() == 4);
    CHECK(recipe.hops[0].alpha_is_stated);
    CHECK(recipe.hops[0].form == HopForm::whole);
    CHECK(within(recipe.hops[0].hop.alpha.middle / percent, 5.5, 1e-9));
    CHECK_FALSE(recipe.hops[1].alpha_is_stated);
    CHECK(recipe.hops[1].form == HopForm::pellet);
    CHECK(within(in_celsius(*recipe.hops[1].temperature), 80.0, 1e-9));
    CHECK(recipe.hops[2].use == HopUse::dry_hop);
    CHECK(within(*recipe.hops[2].time / day, 4.0, 1e-9));
    CHECK(recipe.hops[3].use == HopUse::first_wort);
    CHECK_FALSE(recipe.hops[3].time);
    REQUIRE(recipe.extras.size() == 1);
    CHECK(recipe.extras[0].kind == ExtraKind::spice);
    REQUIRE(recipe.yeasts.size() == 1);
    CHECK(recipe.yeasts[0].attenuation_is_stated);
    CHECK(within(recipe.yeasts[0].yeast.attenuation.middle / fully_attenuated, 0.78, 1e-9));
    CHECK(within(in_celsius(*recipe.fermentation_temperature), 19.0, 1e-9));
    CHECK(within(*recipe.yeasts[0].pitch / million_per_milliliter_plato, 0.75, 1e-9));
    CHECK(within(*recipe.fermentation_time / day, 10.0, 1e-9));
    REQUIRE(recipe.diacetyl_rest);
    CHECK(within(in_celsius(recipe.diacetyl_rest->temperature), 21.0, 1e-9));
    CHECK(within(recipe.diacetyl_rest->time / day, 2.0, 1e-9));
    CHECK(recipe.keeping.packaged == std::chrono::sys_days(std::chrono::year(2026) / 10 / 1));
    CHECK(recipe.keeping.judged == std::chrono::sys_days(std::chrono::year(2026) / 11 / 14));
    CHECK(within(in_celsius(*recipe.keeping.temperature), 4.0, 1e-9));
    CHECK(recipe.conditioning.filtered == false);
    CHECK(recipe.conditioning.nitrogen == true);
    CHECK(recipe.conditioning.bottled == true);
    CHECK(within(recipe.measured.original_gravity->middle / specific_gravity, 1.062, 1e-9));
    CHECK(within(recipe.measured.final_gravity->half_width / specific_gravity, 0.002, 1e-9));
    CHECK_FALSE(recipe.measured.alcohol);
}

TEST_CASE("a plain value keeps the table's spread in proportion, a spread of its own replaces it") {
    const auto cascade = usual_library().ingredients().hop("Cascade");
    REQUIRE(cascade);
    const double relative = cascade->alpha.half_width.value() / cascade->alpha.middle.value();
    const Recipe recipe = sound(head + grist +
                                "hops:\n"
                                "  - {hop: Cascade, mass: 30 g, add: boil, alpha: 8 %}\n"
                                "  - {hop: Cascade, mass: 30 g, add: boil, alpha: 8 +- 0.3 %}\n"
                                "  - {hop: Cascade, mass: 30 g, add: boil, alpha: 7..9 %}\n");
    CHECK(within(recipe.hops[0].hop.alpha.middle / percent, 8.0, 1e-9));
    CHECK(within(recipe.hops[0].hop.alpha.half_width / recipe.hops[0].hop.alpha.middle, relative, 1e-9));
    CHECK(within(recipe.hops[1].hop.alpha.half_width / percent, 0.3, 1e-9));
    CHECK(within(recipe.hops[2].hop.alpha.half_width / percent, 1.0, 1e-9));
    CHECK(within(recipe.hops[0].hop.beta.middle / percent, cascade->beta.middle / percent, 1e-9));
}

TEST_CASE("an ingredient that no table has is taken from what the recipe says of it") {
    const Recipe recipe =
        sound(head +
              "grist:\n"
              "  - {malt: heirloom corn malt, mass: 5 kg, extract: 77 %, color: 8 EBC}\n"
              "  - {sugar: palm jaggery, mass: 5 kg, extract: 90 %, color: 80 EBC}\n"
              "  - {extract: emmer extract, mass: 5 kg, sugar_content: 79 %, color: 12 EBC}\n"
              "hops: [{hop: Wild Thicket, mass: 20 g, alpha: 4 %, add: boil}]\n"
              "yeast: [{class: house blend, attenuation: 80 %}, {class: brettanomyces}]\n");
    CHECK(recipe.grist[0].fermentable.kind == FermentableKind::base);
    CHECK(recipe.grist[0].fermentable.name == "heirloom corn malt");
    CHECK(within(recipe.grist[0].fermentable.extract.middle / percent, 77.0, 1e-9));
    CHECK(recipe.grist[0].fermentable.extract.half_width.value() > 0.0);
    CHECK(recipe.grist[1].fermentable.kind == FermentableKind::sugar);
    CHECK(within(recipe.grist[1].fermentable.moisture.middle / percent, 0.0, 1e-9));
    CHECK(recipe.grist[2].fermentable.kind == FermentableKind::malt_extract);
    CHECK(within(recipe.grist[2].fermentable.extract.middle / percent, 79.0, 1e-9));
    CHECK(recipe.hops[0].hop.name == "Wild Thicket");
    REQUIRE(recipe.yeasts.size() == 2);
    CHECK(recipe.yeasts[0].yeast.name == "house blend");
    CHECK(recipe.yeasts[1].yeast.brettanomyces);
}

TEST_CASE("the key before a known ingredient makes no difference") {
    const Recipe recipe =
        sound(head + "grist:\n  - {malt: sucrose, mass: 1 kg}\n  - {extract: SUCROSE, mass: 1 kg}\n");
    CHECK(recipe.grist[0].fermentable.kind == FermentableKind::sugar);
    CHECK(recipe.grist[1].fermentable.kind == FermentableKind::sugar);
}

TEST_CASE("a recipe is mashed unless it says not, or has nothing to mash") {
    const std::string extract = "grist:\n  - {extract: liquid malt extract pale, mass: 3 kg}\n";
    CHECK(sound(head + grist).mashed);
    CHECK_FALSE(sound(head + grist + "mash: none\n").mashed);
    CHECK_FALSE(sound(head + extract).mashed);
    CHECK(sound(head + extract + "mash: [{temperature: 66 C}]\n").mashed);
}

TEST_CASE("hop extract may hold more alpha acids than any cone") {
    CHECK(recipe_of(head + grist +
                    "hops: [{hop: Magnum, mass: 5 g, alpha: 55 %, form: extract, add: boil}]\n"));
    CHECK_FALSE(recipe_of(head + grist + "hops: [{hop: Magnum, mass: 5 g, alpha: 55 %, add: boil}]\n"));
}

TEST_CASE("a date is a day of the calendar, written year-month-day and in no other way") {
    const auto reads = [](const std::string& date) {
        return recipe_of(head + grist + "yeast: {class: american ale}\ndates: {packaged: " + date + "}\n")
            .value.has_value();
    };
    CHECK(reads("2026-10-01"));
    CHECK(reads("2024-02-29"));
    for (const char* date : {"2026-02-29", "2026-13-01", "2026-00-10", "2026-10-1", "26-10-01", "01.10.2026",
                             "2026/10/01", "2026-10-01T00:00", "+026-10-01", "October"}) {
        CAPTURE(date);
        CHECK_FALSE(reads(date));
    }
}

TEST_CASE("every recipe that comes with the program is sound") {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(ENTRYWISE_SOURCE_DIR "/recipes")) {
        if (entry.path().extension() == ".yaml") {
            CAPTURE(entry.path().string());
            CHECK(read_recipe(entry.path().string(), usual_library().ingredients()).faults.empty());
            ++count;
        }
    }
    CHECK(count >= 10);
}

TEST_CASE("a recipe cut off or changed at any byte gives a recipe or faults, and no harm") {
    const auto text = read_file(ENTRYWISE_SOURCE_DIR "/recipes/slack-tide.yaml", 100000);
    REQUIRE(text);
    const auto is_answered = [](const std::string& changed) {
        const auto recipe = recipe_of(changed);
        return recipe.value.has_value() == recipe.faults.empty();
    };
    std::size_t unanswered = 0;
    for (std::size_t index = 0; index < text->size(); ++index) {
        unanswered += is_answered(text->substr(0, index)) ? 0U : 1U;
        for (const char other : {'\n', ' ', ':', '{', '"', '*', '\x80'}) {
            std::string changed = *text;
            changed[index] = other;
            unanswered += is_answered(changed) ? 0U : 1U;
        }
    }
    CHECK(unanswered == 0);
}

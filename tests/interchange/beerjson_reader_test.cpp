#include "interchange/beerjson_reader.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/interchange/support.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

ExchangedRecipe beerjson_recipe(const std::string& text) {
    return sound(Exchange::beerjson, text);
}

}  // namespace

TEST_CASE("a BeerJSON recipe becomes typed amounts") {
    const Recipe recipe = beerjson_recipe(sample("sample.json")).recipe;
    CHECK(recipe.name == "Sample");
    CHECK(recipe.style == StyleName{"bjcp-2021", "21A"});
    // NIST Handbook 44, appendix C: a US gallon is 3.785 411 784 L, a pound 453.592 37 g, an ounce 28.349 523
    // g.
    CHECK(within(in(recipe.volume.middle, liter), 18.92705892, 1e-8));
    REQUIRE(recipe.grist.size() == 2);
    CHECK(recipe.grist[0].fermentable.name == "pale ale malt");
    CHECK(within(in(recipe.grist[0].mass, gram), 10.5 * 453.59237, 1e-6));
    CHECK(within(in(recipe.grist[0].fermentable.extract.middle, percent), 80.0, 1e-9));
    CHECK(recipe.grist[1].fermentable.name == "sucrose");
    CHECK(recipe.grist[1].use == GristUse::boil);
    // A pound of sucrose in a gallon gives 1.0462, so that this one is sucrose through and through.
    CHECK(within(in(recipe.grist[1].fermentable.extract.middle, percent), 100.0, 0.1));
    REQUIRE(recipe.hops.size() == 3);
    CHECK(recipe.hops[0].hop.name == "Cascade");
    CHECK(within(in(recipe.hops[0].mass, gram), 1.5 * 28.349523125, 1e-9));
    CHECK(within(in(*recipe.hops[0].time, minute), 60.0, 1e-9));
    CHECK(recipe.hops[1].use == HopUse::whirlpool);
    CHECK(recipe.hops[1].form == HopForm::whole);
    CHECK(within(in_celsius(*recipe.hops[1].temperature), 80.0, 1e-9));
    CHECK(recipe.hops[2].use == HopUse::dry_hop);
    CHECK(within(in(*recipe.hops[2].time, day), 4.0, 1e-9));
    CHECK(within(in_celsius(recipe.mash.at(0).temperature), (152.0 - 32.0) / 1.8, 1e-9));
    CHECK(within(in(*recipe.boil.time, minute), 70.0, 1e-9));
    CHECK(recipe.yeasts.at(0).yeast.name == "american ale");
    CHECK(recipe.yeasts.at(0).attenuation_is_stated);
    CHECK(within(in_celsius(*recipe.fermentation_temperature), 19.0, 1e-9));
    CHECK(within(in(recipe.conditioning.carbonation->middle, volume_of_co2), 2.5, 1e-9));
    CHECK(recipe.conditioning.bottled == true);
    CHECK_FALSE(recipe.measured.original_gravity);
}

TEST_CASE("what was matched, read in one of two senses and left out is told, with its place") {
    const ExchangedRecipe recipe = beerjson_recipe(sample("sample.json"));
    CHECK(is_remarked(recipe, RemarkKind::matched, "'Cascade (US)' -> Cascade"));
    CHECK(is_remarked(recipe, RemarkKind::matched, "'Table Sugar' -> sucrose"));
    CHECK(is_remarked(recipe, RemarkKind::left_out, "original gravity 1.06 as stated"));
    CHECK(recipe.remarks.front().place.file == "file");
    CHECK(recipe.remarks.front().place.position.line == 18);
    const ExchangedRecipe other =
        beerjson_recipe(with(sample("sample.json"), "\"duration\": {\"unit\": \"hr\", \"value\": 1}",
                             "\"time\": {\"unit\": \"min\", \"value\": 45}"));
    CHECK(is_remarked(other, RemarkKind::read_as, "a time without a duration"));
    CHECK(within(in(*other.recipe.hops[0].time, minute), 45.0, 1e-9));
    const ExchangedRecipe guide = beerjson_recipe(with(sample("sample.json"), "BJCP 2021", "BJCP 2008"));
    CHECK_FALSE(guide.recipe.style);
    CHECK(is_remarked(guide, RemarkKind::left_out, "the style 'American IPA' of 'BJCP 2008'"));
    CHECK(is_remarked(guide, RemarkKind::missing, "no style"));
}

TEST_CASE("a unit that is not known leaves its amount out, and that is told") {
    const ExchangedRecipe recipe =
        beerjson_recipe(with(sample("sample.json"), "{\"unit\": \"kg\", \"value\": 0.25}",
                             "{\"unit\": \"stone\", \"value\": 0.25}"));
    CHECK(recipe.recipe.grist.size() == 1);
    CHECK(is_remarked(recipe, RemarkKind::left_out, "'stone'"));
    const ExchangedRecipe volume = beerjson_recipe(
        with(sample("sample.json"), "{\"unit\": \"g\", \"value\": 60}", "{\"unit\": \"ml\", \"value\": 60}"));
    CHECK(volume.recipe.hops.size() == 2);
    CHECK(is_remarked(volume, RemarkKind::left_out, "'Citra': 60 mL is a volume"));
}

TEST_CASE("every unit of volume") {
    // UK Units of Measurement Regulations, 1995: the gallon is 4.546 09 L. A US barrel of beer holds 31
    // gallons: United States Code, title 26, section 5051.
    const std::pair<const char*, double> units[] = {
        {"ml", 0.001},     {"l", 1.0},       {"tsp", 0.00492892}, {"tbsp", 0.0147868}, {"floz", 0.0295735},
        {"cup", 0.236588}, {"pt", 0.473176}, {"qt", 0.946353},    {"bbl", 117.348},    {"ifloz", 0.0284131},
        {"ipt", 0.568261}, {"iqt", 1.13652}, {"igal", 4.54609},   {"ibbl", 163.659}};
    for (const auto& each : units) {
        const std::string unit = each.first;
        const double liters = each.second;
        CAPTURE(unit);
        const std::string amount = "{\"unit\": \"" + unit + "\", \"value\": 5000}";
        const auto recipe = exchanged(
            Exchange::beerjson, with(sample("sample.json"), "{\"unit\": \"gal\", \"value\": 5}", amount));
        if (recipe) {
            CHECK(within(in(recipe->recipe.volume.middle, liter) / (5000.0 * liters), 1.0, 1e-5));
        }
    }
}

TEST_CASE("several recipes need one to be picked") {
    std::string two = sample("sample.json");
    const std::size_t start = two.find("      {\n        \"name\"");
    const std::size_t end = two.rfind("\n    ]\n  }\n}");
    const std::string recipe = two.substr(start, end - start);
    two.insert(start, with(recipe, "\"Sample\"", "\"Other\"") + ",");
    CHECK(only_fault(Exchange::beerjson, two) ==
          "file: found 2 recipes, expected one of these: 1 'Other', 2 'Sample'. Choose one by name or number "
          "with "
          "--pick.");
    CHECK(sound(Exchange::beerjson, two, "sample").recipe.name == "Sample");
    CHECK(sound(Exchange::beerjson, two, "1").recipe.name == "Other");
    CHECK(only_fault(Exchange::beerjson, two, "3").find("no recipe '3'") != std::string::npos);
    CHECK(only_fault(Exchange::beerjson, two, "Sampel").find("nearest known: Sample") != std::string::npos);
}

TEST_CASE("hops go where their step of the kettle is") {
    const auto use_at = [](const std::string& step) {
        return beerjson_recipe(with(sample("sample.json"), "\"step\": 3", "\"step\": " + step))
            .recipe.hops[1]
            .use;
    };
    CHECK(use_at("1") == HopUse::first_wort);
    CHECK(use_at("2") == HopUse::boil);
    CHECK(use_at("3") == HopUse::whirlpool);
    CHECK(use_at("99") == HopUse::boil);
}

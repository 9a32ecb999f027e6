#include "interchange/beerxml_reader.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/interchange/support.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

ExchangedRecipe beerxml_recipe(const std::string& text) {
    return sound(Exchange::beerxml, text);
}

}  // namespace

// The units of the standard: kg, L, minutes, degrees Celsius, percent, degrees Lovibond, days (BeerXML,
// recipe exchange standard, version 1, 2003, from memory).
TEST_CASE("a BeerXML recipe becomes typed amounts") {
    const Recipe recipe = beerxml_recipe(sample("sample.xml")).recipe;
    CHECK(recipe.name == "Sample & Sons");
    CHECK(recipe.style == StyleName{"bjcp-2021", "21A"});
    CHECK(within(in(recipe.volume.middle, liter), 20.0, 1e-9));
    CHECK(within(in(recipe.boil.time.value(), minute), 70.0, 1e-9));
    CHECK(within(in(recipe.efficiency->middle, percent), 71.0, 1e-9));
    REQUIRE(recipe.grist.size() == 2);
    CHECK(within(in(recipe.grist[0].mass, kilogram), 4.5, 1e-9));
    CHECK(within(in(recipe.grist[0].fermentable.color.middle, lovibond), 3.0, 1e-9));
    CHECK(within(in(recipe.grist[0].fermentable.moisture.middle, percent), 4.0, 1e-9));
    CHECK(recipe.grist[1].use == GristUse::fermenter);
    REQUIRE(recipe.hops.size() == 4);
    CHECK(within(in(recipe.hops[0].mass, gram), 25.0, 1e-9));
    CHECK(recipe.hops[0].use == HopUse::boil);
    CHECK(recipe.hops[1].use == HopUse::whirlpool);
    CHECK(recipe.hops[2].use == HopUse::first_wort);
    CHECK(recipe.hops[3].use == HopUse::dry_hop);
    CHECK(within(in(*recipe.hops[3].time, day), 7.0, 1e-9));
    CHECK(recipe.extras.at(0).kind == ExtraKind::fining);
    CHECK(within(in(*recipe.extras[0].mass, gram), 5.0, 1e-9));
    CHECK(recipe.yeasts.at(0).yeast.name == "english ale");
    CHECK(within(in_celsius(recipe.mash.at(0).temperature), 66.0, 1e-9));
    CHECK(within(in_celsius(*recipe.fermentation_temperature), 19.0, 1e-9));
    CHECK(within(in(*recipe.fermentation_time, day), 10.0, 1e-9));
    CHECK(within(in(recipe.measured.original_gravity->middle, specific_gravity), 1.055, 1e-9));
    CHECK_FALSE(recipe.measured.final_gravity);
}

TEST_CASE("gravities that are estimates of the file itself are none that were measured") {
    const ExchangedRecipe recipe = beerxml_recipe(
        with(sample("sample.xml"), "<OG>1.055</OG>", "<OG>1.0550000</OG><EST_OG>1.055 SG</EST_OG>"));
    CHECK_FALSE(recipe.recipe.measured.original_gravity);
    CHECK(is_remarked(recipe, RemarkKind::left_out, "OG 1.0550000"));
    const ExchangedRecipe points = beerxml_recipe(with(sample("sample.xml"), "1.055", "1055"));
    CHECK(within(in(points.recipe.measured.original_gravity->middle, specific_gravity), 1.055, 1e-9));
    const ExchangedRecipe plato = beerxml_recipe(with(sample("sample.xml"), "1.055", "13.6"));
    CHECK_FALSE(plato.recipe.measured.original_gravity);
    CHECK(is_remarked(plato, RemarkKind::left_out, "OG 13.6: no specific gravity"));
}

TEST_CASE("a record set in ISO-8859-1 is read where it says so") {
    std::string text = with(sample("sample.xml"), "Sample &amp; Sons", "K\xF6lsch");
    CHECK(only_fault(Exchange::beerxml, text).find("bytes that are no UTF-8") != std::string::npos);
    text = with(text, "UTF-8", "ISO-8859-1");
    CHECK(beerxml_recipe(text).recipe.name == "K\u00F6lsch");
}

TEST_CASE("document types are refused, and no entity is expanded") {
    const std::string bomb =
        "<?xml version=\"1.0\"?>\n<!DOCTYPE lolz [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b "
        "\"&a;&a;&a;&a;\">]>\n<RECIPES><RECIPE><NAME>&b;</NAME></RECIPE></RECIPES>";
    CHECK(only_fault(Exchange::beerxml, bomb).starts_with("file:2:1: found a document type declaration"));
    const std::string outside =
        "<!DOCTYPE r [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><RECIPES><RECIPE><NAME>&x;"
        "</NAME></RECIPE></RECIPES>";
    CHECK(only_fault(Exchange::beerxml, outside).starts_with("file:1:1: found a document type declaration"));
    CHECK(only_fault(Exchange::beerxml, "<!DOCTYPE r SYSTEM \"file:///etc/passwd\"><r/>")
              .starts_with("file:1:1: found a document type declaration"));
    CHECK(beerxml_recipe(with(sample("sample.xml"), "Sample &amp; Sons", "&nowhere;")).recipe.name ==
          "&nowhere;");
}

TEST_CASE("empty elements leave out what they name") {
    const ExchangedRecipe recipe = beerxml_recipe(
        with(sample("sample.xml"), "<BREWER></BREWER>", "<BREWER/><WATERS> </WATERS><NOTES/>"));
    CHECK(recipe.recipe.name == "Sample & Sons");
    const std::string bare =
        "<RECIPES><RECIPE><NAME>Bare</NAME><STYLE/><BATCH_SIZE>20</"
        "BATCH_SIZE><FERMENTABLES><FERMENTABLE><NAME>Pale "
        "Malt</NAME><AMOUNT>5</AMOUNT></FERMENTABLE></FERMENTABLES><HOPS/><MISCS></MISCS><MASH><MASH_STEPS/"
        "></MASH>"
        "</RECIPE></RECIPES>";
    CHECK(beerxml_recipe(bare).recipe.hops.empty());
    CHECK(
        only_fault(Exchange::beerxml, with(bare, "<HOPS/>", "<HOPS>none</HOPS>")).find("an object in HOPS") !=
        std::string::npos);
}

TEST_CASE("what is no record set of recipes is told") {
    CHECK(only_fault(Exchange::beerxml, "<HOPS><HOP><NAME>x</NAME></HOP></HOPS>")
              .starts_with("file:1:1: found the element 'HOPS' without a RECIPE"));
    CHECK(only_fault(Exchange::beerxml, "<RECIPES></RECIPE>").starts_with("file:1:"));
    CHECK(only_fault(Exchange::beerxml, "<").starts_with("file:1:"));
}

#include "interchange/recipe_table.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/interchange/support.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

const std::string table =
    "ingredient,amount,use,time\n"
    "volume,20 L,,\n"
    "Maris Otter,5 kg,mash,\n"
    "Crystal 60L,300 g,mash,\n"
    "table sugar,200 g,boil,\n"
    "Magnum,20 g,boil,60 min\n"
    "\"Goldings, East Kent\",30 g,flameout,\n"
    "Cascade,60 g,dry hop,4 d\n"
    "coriander seed,10 g,boil,5 min\n"
    "english ale,,yeast,\n";

ExchangedRecipe table_recipe(const std::string& text) {
    return sound(Exchange::table, text);
}

}  // namespace

TEST_CASE("a table of ingredients is a recipe") {
    const ExchangedRecipe read_table = table_recipe(table);
    const Recipe& recipe = read_table.recipe;
    CHECK(recipe.name == "file");
    CHECK(within(in(recipe.volume.middle, liter), 20.0, 1e-9));
    REQUIRE(recipe.grist.size() == 3);
    CHECK(recipe.grist[0].fermentable.name == "pale ale malt");
    CHECK(recipe.grist[1].fermentable.kind == FermentableKind::crystal);
    CHECK(recipe.grist[2].fermentable.name == "sucrose");
    CHECK(recipe.grist[2].use == GristUse::boil);
    REQUIRE(recipe.hops.size() == 3);
    CHECK(recipe.hops[1].hop.name == "East Kent Goldings");
    CHECK(within(in(*recipe.hops[1].time, minute), 0.0, 1e-9));
    CHECK(recipe.hops[2].use == HopUse::dry_hop);
    CHECK(recipe.extras.at(0).name == "coriander seed");
    CHECK(recipe.yeasts.at(0).yeast.name == "english ale");
    CHECK(is_remarked(read_table, RemarkKind::matched, "'Maris Otter' -> pale ale malt"));
    CHECK(is_remarked(read_table, RemarkKind::read_as, "'coriander seed' is no known malt"));
    CHECK(is_remarked(read_table, RemarkKind::missing, "no line that names the recipe"));
}

TEST_CASE("columns in any order, apart by tabs, with units in the header") {
    const Recipe recipe = table_recipe(
                              "Time (min)\tWhen\tAmount (g)\tName\tAlpha (%)\tPrice\n"
                              "\t\tPortsmouth\tname\n"
                              "\t\t20 L\tvolume\n"
                              "\t\t71 %\tefficiency\n"
                              "60\t\t66 C\tmash\n"
                              "\tmash\t5000\tPilsner malt\t\t9.90\n"
                              "90\tboil\t40\tSaaz\t3.5\n")
                              .recipe;
    CHECK(recipe.name == "Portsmouth");
    CHECK(within(in(recipe.efficiency->middle, percent), 71.0, 1e-9));
    CHECK(within(in(recipe.mash.at(0).time, minute), 60.0, 1e-9));
    CHECK(within(in(recipe.grist.at(0).mass, kilogram), 5.0, 1e-9));
    CHECK(within(in(*recipe.hops.at(0).time, minute), 90.0, 1e-9));
    CHECK(within(in(recipe.hops[0].hop.alpha.middle, percent), 3.5, 1e-9));
}

TEST_CASE("a table is known by its header") {
    CHECK(exchange_of("-", table) == Exchange::table);
    CHECK(exchange_of("-", "Name\tAmount (g)\n") == Exchange::table);
    CHECK(exchange_of("x.csv", "") == Exchange::table);
    CHECK_FALSE(exchange_of("-", "format: entrywise/recipe/1\nname: x\n"));
    CHECK_FALSE(exchange_of("-", "name, amount of nothing\n"));
}

TEST_CASE("what a table leaves out or says wrongly is told") {
    CHECK(only_fault(Exchange::table, with(table, "volume,20 L,,\n", "")).find("volume") !=
          std::string::npos);
    CHECK(only_fault(Exchange::table, with(table, "5 kg", "5")).starts_with("file:3:13: found '5'"));
    CHECK(only_fault(Exchange::table, with(table, "dry hop", "dryhopp"))
              .starts_with("file:8:14: found 'dryhopp'"));
    CHECK(only_fault(Exchange::table, with(table, "300 g", "-300 g")).starts_with("file:4:13: "));
    CHECK(only_fault(Exchange::table, "ingredient,use\nx,boil\n").find("without the column amount") !=
          std::string::npos);
    CHECK(only_fault(Exchange::table, "").find("an empty table") != std::string::npos);
    CHECK(only_fault(Exchange::table, with(table, "english", "\"english")).starts_with("file:10:1: "));
}

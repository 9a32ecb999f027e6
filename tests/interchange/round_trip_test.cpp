#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "base/file.hpp"
#include "brewing/brew.hpp"
#include "interchange/beerjson_writer.hpp"
#include "interchange/recipe_writer.hpp"
#include "reading/recipe_file.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "report/estimate_json.hpp"
#include "tests/interchange/support.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::vector<std::string> demo_recipes() {
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(ENTRYWISE_SOURCE_DIR "/recipes")) {
        if (entry.path().extension() == ".yaml") {
            paths.push_back(entry.path().string());
        }
    }
    std::sort(paths.begin(), paths.end());
    REQUIRE(paths.size() >= 10);
    return paths;
}

Recipe recipe_in(const std::string& path) {
    const auto recipe = read_recipe(path, known_ingredients());
    REQUIRE(recipe);
    return *recipe;
}

Recipe through_beerjson(const Recipe& recipe) {
    const WrittenExchange written = beerjson_text(recipe, std::nullopt, known_ingredients());
    const auto read = read_exchange(Exchange::beerjson, written.text, recipe.file, {}, known_ingredients());
    for (const Fault& fault : read.faults) {
        MESSAGE(to_line(fault));
    }
    REQUIRE(read);
    return read->recipe;
}

/// Every estimate as it is printed, places in the file aside.
std::string estimates_of(Recipe recipe) {
    const auto take_places = [](auto& additions) {
        for (auto& addition : additions) {
            addition.position = {};
        }
    };
    take_places(recipe.grist);
    take_places(recipe.hops);
    take_places(recipe.extras);
    take_places(recipe.yeasts);
    Deviates deviates(usual_draws);
    return json_text(estimate_json(recipe, brew(recipe, deviates)));
}

/// To the twelfth digit: far within what is printed.
template <class Quantity>
bool same(Quantity left, Quantity right) {
    return within(left.value(), right.value(), 1e-12 * std::max(1.0, std::abs(left.value())));
}

bool same(const Temperature& left, const Temperature& right) {
    return within(in_celsius(left), in_celsius(right), 1e-9);
}

template <class Quantity>
bool same(const Uncertain<Quantity>& left, const Uncertain<Quantity>& right) {
    return same(left.middle, right.middle) && same(left.half_width, right.half_width);
}

template <class Value>
bool same(const std::optional<Value>& left, const std::optional<Value>& right) {
    return left.has_value() == right.has_value() && (!left || same(*left, *right));
}

void check_additions(const Recipe& recipe, const Recipe& back) {
    REQUIRE(back.grist.size() == recipe.grist.size());
    for (std::size_t index = 0; index < recipe.grist.size(); ++index) {
        const GristAddition& one = recipe.grist[index];
        const GristAddition& other = back.grist[index];
        CHECK(other.fermentable.name == one.fermentable.name);
        CHECK(same(other.mass, one.mass));
        CHECK(same(other.fermentable.extract, one.fermentable.extract));
        CHECK(same(other.fermentable.color, one.fermentable.color));
        CHECK(same(other.fermentable.moisture, one.fermentable.moisture));
        CHECK(same(other.fermentable.fermentability, one.fermentable.fermentability));
        CHECK(other.use == one.use);
    }
    REQUIRE(back.hops.size() == recipe.hops.size());
    for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
        const HopAddition& one = recipe.hops[index];
        const HopAddition& other = back.hops[index];
        CHECK(other.hop.name == one.hop.name);
        CHECK(same(other.mass, one.mass));
        CHECK(same(other.hop.alpha, one.hop.alpha));
        CHECK(other.alpha_is_stated == one.alpha_is_stated);
        CHECK(same(other.hop.beta, one.hop.beta));
        CHECK(same(other.time, one.time));
        CHECK(same(other.temperature, one.temperature));
        CHECK(other.use == one.use);
        CHECK(other.form == one.form);
    }
    REQUIRE(back.extras.size() == recipe.extras.size());
    for (std::size_t index = 0; index < recipe.extras.size(); ++index) {
        const ExtraAddition& one = recipe.extras[index];
        const ExtraAddition& other = back.extras[index];
        CHECK(other.name == one.name);
        CHECK(other.kind == one.kind);
        CHECK(same(other.mass, one.mass));
        CHECK(same(other.volume, one.volume));
        CHECK(same(other.time, one.time));
        CHECK(other.use == one.use);
    }
    REQUIRE(back.yeasts.size() == recipe.yeasts.size());
    for (std::size_t index = 0; index < recipe.yeasts.size(); ++index) {
        CHECK(back.yeasts[index].yeast.name == recipe.yeasts[index].yeast.name);
        CHECK(same(back.yeasts[index].yeast.attenuation, recipe.yeasts[index].yeast.attenuation));
        CHECK(same(back.yeasts[index].pitch, recipe.yeasts[index].pitch));
    }
}

void check_process(const Recipe& recipe, const Recipe& back) {
    CHECK(back.name == recipe.name);
    CHECK(back.style == recipe.style);
    CHECK(back.base_style == recipe.base_style);
    CHECK(back.declares == recipe.declares);
    CHECK(same(back.volume, recipe.volume));
    CHECK(same(back.efficiency, recipe.efficiency));
    CHECK(same(back.boil.time, recipe.boil.time));
    CHECK(same(back.boil.evaporation, recipe.boil.evaporation));
    CHECK(back.mashed == recipe.mashed);
    REQUIRE(back.mash.size() == recipe.mash.size());
    for (std::size_t index = 0; index < recipe.mash.size(); ++index) {
        CHECK(same(back.mash[index].temperature, recipe.mash[index].temperature));
        CHECK(same(back.mash[index].time, recipe.mash[index].time));
        CHECK(back.mash[index].time_is_stated == recipe.mash[index].time_is_stated);
    }
    CHECK(same(back.fermentation_temperature, recipe.fermentation_temperature));
    CHECK(same(back.fermentation_time, recipe.fermentation_time));
    CHECK(back.diacetyl_rest.has_value() == recipe.diacetyl_rest.has_value());
    CHECK(same(back.conditioning.carbonation, recipe.conditioning.carbonation));
    CHECK(same(back.conditioning.time, recipe.conditioning.time));
    CHECK(same(back.conditioning.temperature, recipe.conditioning.temperature));
    CHECK(back.conditioning.filtered == recipe.conditioning.filtered);
    CHECK(back.conditioning.nitrogen == recipe.conditioning.nitrogen);
    CHECK(back.conditioning.bottled == recipe.conditioning.bottled);
    CHECK(back.keeping.packaged == recipe.keeping.packaged);
    CHECK(same(back.measured.original_gravity, recipe.measured.original_gravity));
    CHECK(same(back.measured.final_gravity, recipe.measured.final_gravity));
    CHECK(same(back.measured.bitterness, recipe.measured.bitterness));
    CHECK(same(back.measured.color, recipe.measured.color));
}

/// A recipe that says everything a recipe file may say.
const std::string everything = R"(format: entrywise/recipe/1
name: "Everything: at once"
style: ba-2025/03-08
base_style: bjcp-2021/18B
declares: {strength: standard, base style: pale ale}
volume: 5.5 +- 0.1 gal
boil: {time: 75 min, evaporation: 1 gal/h}
efficiency: 68..74 %
mash:
  - {temperature: 151 F, time: 1 h 30 min}
  - {temperature: 76 C}
grist:
  - {malt: pale ale malt, mass: 9 lb 6 oz, extract: 80.3 +- 0.4 %, moisture: 3.1 %}
  - {malt: my own malt, mass: 250 g, color: 61 EBC, extract: 76 %, fermentability: 71 +- 3 %}
  - {sugar: sucrose, mass: 400 g, add: boil}
  - {extract: dry malt extract pale, mass: 120 g, add: fermenter}
hops:
  - {hop: Magnum, mass: 15 g, alpha: 12..14 %, add: first wort, time: 75 min, form: whole}
  - {hop: Cascade, mass: 1 oz, add: boil, time: 7.5 min}
  - {hop: Cascade, mass: 30 g, alpha: 5.5 %, add: whirlpool, temperature: 80 C, time: 20 min}
  - {hop: Cascade, mass: 30 g, alpha: 5.5 %, beta: 6.1 %, add: whirlpool}
  - {hop: Saaz, mass: 11 g, add: mash, storage_loss: 44 %, oil: 0.7 mL/100g}
  - {hop: Our Own, mass: 60 g, alpha: 9.9 %, family: american, add: dry hop, time: 4 d}
extras:
  - {name: coriander, kind: spice, mass: 15 g, add: boil, time: 5 min}
  - {name: table salt, kind: salt, add: whirlpool}
  - {name: cold brew, kind: coffee, volume: 200 mL, add: fermenter, time: 1 d}
yeast:
  - {class: american ale, attenuation: 78 +- 2 %, pitch: 0.75 M/mL/P, alcohol_limit: 12 %}
  - {class: brettanomyces}
fermentation: {temperature: 19 C, time: 10 d, rest: {temperature: 21 C, time: 2 d}}
conditioning: {carbonation: 2.4 +- 0.1 vol, time: 21 d, temperature: 4 C, filtered: true, nitrogen: false, package: bottle}
dates: {packaged: 2026-10-01, judged: 2026-11-14, kept: 4 C}
measured: {original_gravity: 1.062 +- 0.001, final_gravity: 1.011, bitterness: 48 IBU, color: 18 EBC, alcohol: 6.4 %}
)";

Recipe recipe_of(const std::string& text) {
    const auto document = yaml_document(text, "everything.yaml");
    REQUIRE(document);
    const auto recipe = read_recipe(*document, known_ingredients(), "everything.yaml");
    for (const Fault& fault : recipe.faults) {
        MESSAGE(to_line(fault));
    }
    REQUIRE(recipe);
    return *recipe;
}

}  // namespace

TEST_CASE("every demo recipe comes back from BeerJSON with every number") {
    for (const std::string& path : demo_recipes()) {
        CAPTURE(path);
        const Recipe recipe = recipe_in(path);
        const Recipe back = through_beerjson(recipe);
        check_additions(recipe, back);
        check_process(recipe, back);
        CHECK(estimates_of(back) == estimates_of(recipe));
    }
}

TEST_CASE("a recipe that says all a recipe file may say comes back from BeerJSON") {
    const Recipe recipe = recipe_of(everything);
    const Recipe back = through_beerjson(recipe);
    check_additions(recipe, back);
    check_process(recipe, back);
    CHECK(estimates_of(back) == estimates_of(recipe));
}

TEST_CASE("a name of one's own is not taken for a known one on the way back") {
    const Recipe recipe = recipe_of(
        "format: entrywise/recipe/1\nname: x\nvolume: 20 L\nefficiency: 72 %\n"
        "grist: [{malt: pale ale maltt, mass: 5 kg, extract: 80 %, color: 3 L}]\nyeast: {class: american "
        "ale}\n");
    CHECK(through_beerjson(recipe).grist.at(0).fermentable.name == "pale ale maltt");
}

TEST_CASE("what BeerJSON has no place for is told, and stands in its notes") {
    const WrittenExchange written = beerjson_text(recipe_of(everything), std::nullopt, known_ingredients());
    CHECK(written.text.find("boil.evaporation: ") != std::string::npos);
    CHECK(std::any_of(written.remarks.begin(), written.remarks.end(), [](const Remark& remark) {
        return remark.kind == RemarkKind::left_out && remark.text.find("yeast.1.pitch") != std::string::npos;
    }));
}

TEST_CASE("a recipe file is written so that it reads back") {
    for (const std::string& path : demo_recipes()) {
        CAPTURE(path);
        const auto bytes = read_file(path, most_document_bytes);
        REQUIRE(bytes);
        const auto document = yaml_document(*bytes, path);
        REQUIRE(document);
        const Recipe recipe = recipe_in(path);
        const Recipe back = recipe_of(recipe_file_text(*document));
        check_additions(recipe, back);
        check_process(recipe, back);
    }
}

Node read_as_document(const std::string& name) {
    Node document = *yaml_document(
        "format: entrywise/recipe/1\nname: x\nvolume: 20 L\ngrist: [{malt: pale ale malt, mass: 5 kg}]\n",
        "file");
    document.entries[1].value.text = name;
    return document;
}

TEST_CASE("texts that mean something in YAML are quoted") {
    const auto document = yaml_document(
        "format: entrywise/recipe/1\nname: \"#1: [all], {at} once - 'so' \\\"said\\\" \\\\ null\"\nvolume: "
        "20 L\n"
        "grist: [{malt: pale ale malt, mass: 5 kg}]\n",
        "file");
    REQUIRE(document);
    const Recipe back = recipe_of(recipe_file_text(*document));
    CHECK(back.name == "#1: [all], {at} once - 'so' \"said\" \\ null");
}

TEST_CASE("a name that could turn the writing direction is written by its number") {
    Node document = read_as_document("Ale \u202E elA");
    CHECK(recipe_file_text(document).find("\\U0000202E") != std::string::npos);
    CHECK(recipe_file_text(document).find("\u202E") == std::string::npos);
    CHECK(recipe_of(recipe_file_text(document)).name == "Ale \u202E elA");
}

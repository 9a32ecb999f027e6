#include "reading/mended_text.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/has.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

constexpr const char* original = R"(# Brewed at the boathouse
format: entrywise/recipe/1
name: Mooring
volume: 20 L   # into the fermenter
boil: {time: 60 min}
mash:
  - {temperature: 66 C, time: 60 min}
grist:
  # the backbone
  - {malt: pale ale malt, mass: 4.6 kg}
  - {malt: crystal medium, mass: 300 g, color: 150 EBC}   # from last year
  - malt: chocolate malt
    mass: 100 g
hops:
  - {hop: Magnum, mass: 18 g, alpha: 13 %, add: boil, time: 60 min}
  - {hop: Cascade, mass: 30 g, add: boil, time: 10 min}
yeast: {class: american ale, attenuation: 78 %}
fermentation: {temperature: 19 C}
measured: {original_gravity: 1.054, final_gravity: 1.012}
)";

Recipe read(const std::string& text) {
    const auto document = yaml_document(text, "mooring.yaml");
    REQUIRE(document);
    const auto recipe = read_recipe(*document, usual_library().ingredients(), "mooring.yaml");
    for (const Fault& fault : recipe.faults) {
        FAIL_CHECK(to_line(fault));
    }
    REQUIRE(recipe);
    return *recipe;
}

std::string text_of(const Recipe& mended, const std::string& text = original) {
    const auto written = mended_text(text, read(text), mended, "mooring.yaml");
    REQUIRE(written);
    return *written;
}

std::string with(std::string text, const std::string& from, const std::string& to) {
    return text.replace(text.find(from), from.size(), to);
}

}  // namespace

TEST_CASE("a recipe that is not changed is written byte by byte") {
    CHECK(text_of(read(original)) == original);
}

TEST_CASE("only the value that changes is written anew") {
    Recipe mended = read(original);
    mended.grist[1].mass = 180.0 * gram;
    CHECK(text_of(mended) == with(original, "mass: 300 g", "mass: 180 g"));
    mended = read(original);
    mended.grist[2].mass = 60.0 * gram;
    CHECK(text_of(mended) == with(original, "mass: 100 g", "mass: 60 g"));
    mended = read(original);
    mended.mash.front().temperature = celsius(68.0);
    CHECK(text_of(mended) == with(original, "temperature: 66 C", "temperature: 68 C"));
    mended = read(original);
    mended.volume.middle = 22.0 * liter;
    CHECK(text_of(mended) == with(original, "volume: 20 L", "volume: 22 L"));
    mended = read(original);
    mended.hops[1].time = 25.0 * minute;
    CHECK(text_of(mended) == with(original, "time: 10 min", "time: 25 min"));
}

TEST_CASE("what is left out goes with its line, and its comment stays") {
    Recipe mended = read(original);
    mended.grist.erase(mended.grist.begin() + 1);
    const std::string text = text_of(mended);
    CHECK(!has(text, "crystal"));
    CHECK(has(text, "# from last year"));
    CHECK(read(text).grist.size() == 2);
    mended = read(original);
    mended.grist.pop_back();
    CHECK(read(text_of(mended)).grist.size() == 2);
    mended = read(original);
    mended.hops.clear();
    const std::string unhopped = text_of(mended);
    CHECK(!has(unhopped, "hops"));
    CHECK(read(unhopped).hops.empty());
}

TEST_CASE("what is added stands behind its list, or in a list of its own") {
    Recipe mended = read(original);
    HopAddition dry = mended.hops.back();
    dry.use = HopUse::dry_hop;
    dry.time = 4.0 * day;
    dry.mass = 55.0 * gram;
    dry.position = {500001, 1};
    mended.hops.push_back(dry);
    ExtraAddition gelatin;
    gelatin.name = "gelatin";
    gelatin.kind = ExtraKind::fining;
    gelatin.use = ExtraUse::fermenter;
    gelatin.mass = 2.0 * gram;
    gelatin.position = {500002, 1};
    mended.extras.push_back(gelatin);
    const std::string text = text_of(mended);
    CHECK(has(text, "time: 10 min}\n  - {hop: Cascade, mass: 55 g, add: dry hop, time: 4 d}\n"));
    CHECK(has(text, "extras:\n  - {name: gelatin, kind: fining, mass: 2 g, add: fermenter}"));
    const Recipe again = read(text);
    REQUIRE(again.hops.size() == 3);
    CHECK(again.hops.back().use == HopUse::dry_hop);
    REQUIRE(again.extras.size() == 1);
}

TEST_CASE("another yeast takes its stated attenuation along, a key that is missing is added") {
    Recipe mended = read(original);
    mended.yeasts.front().yeast = *usual_library().ingredients().yeast("german lager");
    mended.fermentation_temperature = celsius(12.0);
    mended.conditioning.carbonation = Uncertain<Carbonation>{2.6 * volume_of_co2, {}};
    mended.conditioning.time = 28.0 * day;
    const std::string text = text_of(mended);
    CHECK(has(text, "yeast: {class: german lager}"));
    CHECK(has(text, "fermentation: {temperature: 12 C}"));
    CHECK(has(text, "conditioning: {carbonation: 2.6 vol, time: 28 d}"));
    const Recipe again = read(text);
    CHECK(again.yeasts.front().yeast.name == "german lager");
    CHECK(!again.yeasts.front().attenuation_is_stated);
    CHECK(again.conditioning.time == 28.0 * day);
}

TEST_CASE("what was measured and no longer holds is taken out, all of it or in part") {
    Recipe mended = read(original);
    mended.measured.final_gravity.reset();
    const std::string text = text_of(mended);
    CHECK(has(text, "measured: {original_gravity: 1.054}"));
    CHECK(!read(text).measured.final_gravity);
    mended.measured.original_gravity.reset();
    CHECK(!has(text_of(mended), "measured"));
}

TEST_CASE("lists in brackets, characters of several bytes and line ends of Windows are edited too") {
    std::string text =
        "format: entrywise/recipe/1\nname: Bj\xC3\xB8rn\xC3\xB8ya \xE2\x80\x93 \xC3\xB8l\nvolume: 20 L\n"
        "grist: [{malt: pale malt, mass: 4 kg}, {malt: crystal medium, mass: 200 g}, {malt: black malt, "
        "mass: 50 g}]\n"
        "hops: [{hop: \"Cascade\", mass: '30 g', add: boil, time: 60 min}] # all\nyeast: {class: american "
        "ale}\n";
    Recipe mended = read(text);
    mended.grist.erase(mended.grist.begin() + 1);
    mended.hops.front().mass = 21.0 * gram;
    std::string written = text_of(mended, text);
    CHECK(has(written, "grist: [{malt: pale malt, mass: 4 kg}, {malt: black malt, mass: 50 g}]"));
    CHECK(has(written, "mass: 21 g"));
    CHECK(read(written).hops.front().mass == 21.0 * gram);
    for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 2)) {
        text.insert(at, "\r");
    }
    written = text_of(mended, text);
    CHECK(std::count(written.begin(), written.end(), '\n') ==
          std::count(written.begin(), written.end(), '\r'));
}

TEST_CASE("a file that is no recipe file is not edited") {
    const auto written =
        mended_text("format: else/1\nname: x\n", read(original), read(original), "else.yaml");
    CHECK(!written);
    REQUIRE(written.faults.size() == 1);
    CHECK(written.faults.front().place.file == "else.yaml");
}

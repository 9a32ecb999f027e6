#include "judging/kind.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

#include "tests/support/guide.hpp"
#include "tests/support/judging.hpp"

// What styles smell of: Beer Judge Certification Program, Beer Style Guidelines, 2021. What hops, malts and
// yeasts smell of: the program's own ingredients, whose sources stand beside them.

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using Ids = std::vector<std::string>;

constexpr double strong = 4.5;

Ids ids_of(const std::vector<KindMiss>& misses) {
    Ids ids;
    for (const KindMiss& miss : misses) {
        ids.push_back(id_of(miss.finding));
    }
    return ids;
}

/// A profile in which nothing is sensed but these.
Profile profile_of_only(const std::vector<Attribute>& sensed) {
    Profile profile = plain_profile();
    for (const Attribute attribute : all_attributes()) {
        profile.level[attribute] = always(0.0);
    }
    for (const Attribute attribute : sensed) {
        profile.level[attribute] = always(strong);
    }
    return profile;
}

std::vector<KindMiss> misses_of(const Recipe& recipe, const Beer& beer, const std::vector<Attribute>& sensed,
                                const Style& style) {
    const Profile profile = profile_of_only(sensed);
    return kind_misses(recipe, Impression(beer, profile), style, usual_score_sheet(), usual_phrases().kin);
}

std::vector<KindMiss> hopped_with(const std::string& name, const std::string& style,
                                  const std::vector<Attribute>& sensed = {Attribute::aroma_hop,
                                                                          Attribute::flavor_hop}) {
    Recipe recipe;
    recipe.hops.emplace_back();
    recipe.hops.back().hop = *usual_library().ingredients().hop(name);
    recipe.hops.back().position = {3, 1};
    Beer beer = plain_beer();
    beer.drivers.hop_aroma.sources = {{name, {3, 1}, 1.0}};
    return misses_of(recipe, beer, sensed, guide_style(style));
}

std::vector<KindMiss> malted_with(const std::string& name, const Style& style) {
    Recipe recipe;
    recipe.grist.emplace_back();
    recipe.grist.back().fermentable = *usual_library().ingredients().fermentable(name);
    recipe.grist.back().position = {3, 1};
    Beer beer = plain_beer();
    beer.drivers.caramel.sources = {{name, {3, 1}, 1.0}};
    return misses_of(recipe, beer, {Attribute::aroma_caramel, Attribute::flavor_caramel}, style);
}

std::vector<KindMiss> malted_with(const std::string& name, const std::string& style) {
    return malted_with(name, guide_style(style));
}

std::vector<KindMiss> fermented_with(const std::string& name, const std::vector<Attribute>& sensed,
                                     const std::string& style) {
    Recipe recipe;
    recipe.yeasts.emplace_back();
    recipe.yeasts.back().yeast = *usual_library().ingredients().yeast(name);
    return misses_of(recipe, plain_beer(), sensed, guide_style(style));
}

const std::vector<Attribute> fruity{Attribute::aroma_ester, Attribute::flavor_ester};
const std::vector<Attribute> spicy{Attribute::aroma_phenol, Attribute::flavor_phenol};

}  // namespace

TEST_CASE("fruity new hops in a German Pils are of another kind, Tettnanger is not") {
    CHECK(ids_of(hopped_with("Galaxy", "5D")) == Ids{"aroma.hop_kind.above"});
    CHECK(ids_of(hopped_with("Nelson Sauvin", "5D")) == Ids{"aroma.hop_kind.above"});
    CHECK(hopped_with("Tettnanger", "5D").empty());
    CHECK(hopped_with("Saaz", "5D").empty());
}

TEST_CASE("American hops belong into an American IPA and not into a Czech lager") {
    CHECK(hopped_with("Cascade", "21A").empty());
    CHECK(hopped_with("Simcoe", "21A").empty());
    CHECK(hopped_with("Saaz", "3B").empty());
    const auto misses = hopped_with("Citra", "3B");
    REQUIRE(misses.size() == 1);
    CHECK(misses.front().sources.front().ingredient == "Citra");
    CHECK(misses.front().asked.front() == guide_style("3B").hop_notes.front());
}

TEST_CASE(
    "the raisins of dark crystal malt are another kind in a Helles, and not where a style has dark fruit") {
    CHECK(ids_of(malted_with("crystal very dark", "4A")) == Ids{"aroma.malt_kind.above"});
    for (const std::string strong_ale : {"9A", "17B", "17D", "26B", "26D"}) {
        CAPTURE(strong_ale);
        CHECK(malted_with("crystal very dark", strong_ale).empty());
    }
}

TEST_CASE("caramel is another kind in a weissbier, and not where a style has a level for it") {
    CHECK(ids_of(malted_with("crystal medium", "10A")) == Ids{"aroma.malt_kind.above"});
    CHECK(malted_with("crystal medium", "11B").empty());
    CHECK(malted_with("crystal medium", "7A").empty());
}

TEST_CASE("a level for caramel in the flavor alone makes it at home in the nose too") {
    Style style = guide_style("10A");
    REQUIRE(!style.expected[Attribute::aroma_caramel]);
    REQUIRE(!style.expected[Attribute::flavor_caramel]);
    style.expected[Attribute::flavor_caramel] = Expectation{0.0, 4.0, false};
    CHECK(malted_with("crystal medium", style).empty());
}

TEST_CASE("a weissbier asks for banana, which a saison yeast does not give") {
    CHECK(fermented_with("bavarian wheat", fruity, "10A").empty());
    CHECK(ids_of(fermented_with("saison", fruity, "10A")) == Ids{"aroma.ester_kind.above"});
    CHECK(fermented_with("saison", fruity, "25B").empty());
}

TEST_CASE("a weissbier asks for clove, which is not the horse of Brettanomyces") {
    CHECK(fermented_with("bavarian wheat", spicy, "10A").empty());
    CHECK(ids_of(fermented_with("brettanomyces", spicy, "10A")) == Ids{"aroma.phenol_kind.above"});
    CHECK(fermented_with("saison", spicy, "25B").empty());
}

// Common practice: old ales and barleywines are fermented with plain English ale yeast, doppelbock with lager
// yeast; age and dark malt bring the dried fruit.
TEST_CASE("the usual yeast of a style is at home in it, even where age brings the fruit") {
    for (const auto& usual : std::vector<std::pair<std::string, std::string>>{{"english ale", "17D"},
                                                                              {"english ale", "17B"},
                                                                              {"german lager", "9A"},
                                                                              {"american ale", "20C"}}) {
        const std::string& style = usual.second;
        CAPTURE(style);
        CHECK(fermented_with(usual.first, fruity, style).empty());
    }
}

TEST_CASE("what is not sensed is of no kind") {
    CHECK(fermented_with("saison", {}, "10A").empty());
}

TEST_CASE("another kind costs at most what the sheet says") {
    for (const KindMiss& miss : hopped_with("Galaxy", "5D")) {
        CHECK(miss.finding.points <= usual_score_sheet().other_kind);
        CHECK(miss.finding.points > 0.0);
    }
}

TEST_CASE("another kind costs what the sheet says, as far as it is noticed") {
    Recipe recipe;
    recipe.hops.emplace_back();
    recipe.hops.back().hop = *usual_library().ingredients().hop("Galaxy");
    recipe.hops.back().position = {3, 1};
    Beer beer = plain_beer();
    beer.drivers.hop_aroma.sources = {{"Galaxy", {3, 1}, 1.0}};
    const Profile profile = profile_of_only({Attribute::aroma_hop, Attribute::flavor_hop});
    const auto miss_where_it_costs = [&](double points) {
        ScoreSheet sheet = usual_score_sheet();
        sheet.other_kind = points;
        const auto misses =
            kind_misses(recipe, Impression(beer, profile), guide_style("5D"), sheet, usual_phrases().kin);
        REQUIRE(misses.size() == 1);
        return misses.front().finding;
    };
    const Finding dear = miss_where_it_costs(4.0);
    CHECK(dear.noticed > 0.5);
    CHECK(dear.points == 4.0 * dear.noticed);
    CHECK(miss_where_it_costs(2.0).points == 2.0 * dear.noticed);
}

TEST_CASE("hops that are mostly of another kind are noticed less than hops that are all of it") {
    const auto noticed = [](double of_galaxy) {
        Recipe recipe;
        Beer beer = plain_beer();
        for (const std::string name : {"Galaxy", "Tettnanger"}) {
            recipe.hops.emplace_back();
            recipe.hops.back().hop = *usual_library().ingredients().hop(name);
            recipe.hops.back().position = {static_cast<int>(recipe.hops.size()), 1};
            beer.drivers.hop_aroma.sources.push_back(
                {name, recipe.hops.back().position, name == "Galaxy" ? of_galaxy : 1.0 - of_galaxy});
        }
        const auto misses =
            misses_of(recipe, beer, {Attribute::aroma_hop, Attribute::flavor_hop}, guide_style("5D"));
        REQUIRE(misses.size() == 1);
        return misses.front().finding.noticed;
    };
    CHECK(noticed(0.9) < noticed(1.0));
    CHECK(noticed(1.0) <= 1.0);
}

TEST_CASE("a kind is told by smell or by taste, whichever is the stronger") {
    CHECK(hopped_with("Galaxy", "5D", {Attribute::aroma_hop}).size() == 1);
    CHECK(hopped_with("Galaxy", "5D", {Attribute::flavor_hop}).size() == 1);
}

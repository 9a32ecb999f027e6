#include "advice/ranking.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "tests/support/demo.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Ranking ranked(const Recipe& recipe, const std::optional<StyleName>& declared = {}) {
    return rank(recipe, all_of_the_guide(), usual_handbook(), declared);
}

std::size_t place_of(const Ranking& ranking, const std::string& code) {
    const auto found = std::find_if(ranking.styles.begin(), ranking.styles.end(),
                                    [&](const RankedStyle& style) { return style.name.code == code; });
    return static_cast<std::size_t>(found - ranking.styles.begin());
}

/// An American ale of pale ale malt, from the middle of a pale ale's strength and bitterness at 0 to that of
/// an IPA at 1. Numbers of the two: Beer Judge Certification Program, Beer Style Guidelines, 2021, 18B and
/// 21A.
Recipe american_ale_toward_ipa(double toward_ipa) {
    Recipe recipe = demo("slack-tide");
    const auto between = [&](double pale, double strong) { return pale + toward_ipa * (strong - pale); };
    recipe.grist.resize(2);
    recipe.grist[0].mass = between(4.55, 5.45) * kilogram;
    recipe.grist[1].mass = 0.25 * kilogram;
    recipe.hops[0].mass = between(7.0, 12.0) * gram;
    for (std::size_t late = 1; late < recipe.hops.size(); ++late) {
        recipe.hops[late].mass *= between(0.45, 1.0);
    }
    return recipe;
}

}  // namespace

TEST_CASE("a beer brewed to a style leads in it") {
    CHECK(place_of(ranked(american_ale_toward_ipa(0.0)), "18B") == 0);
    CHECK(place_of(ranked(american_ale_toward_ipa(1.0)), "21A") == 0);
    CHECK(place_of(ranked(demo("night-watch")), demo("night-watch").style->code) <= 1);
}

TEST_CASE("a beer half way between two styles has both on top, with about even chances") {
    double low = 0.0;
    double high = 1.0;
    for (int step = 0; step < 7; ++step) {
        const double middle = 0.5 * (low + high);
        const Ranking ranking = ranked(american_ale_toward_ipa(middle));
        const bool is_pale = place_of(ranking, "18B") < place_of(ranking, "21A");
        (is_pale ? low : high) = middle;
    }
    // The two change places somewhere near the middle of the way.
    CHECK(low > 0.2);
    CHECK(high < 0.8);
    const Ranking ranking = ranked(american_ale_toward_ipa(0.5));
    CHECK(place_of(ranking, "18B") <= 1);
    CHECK(place_of(ranking, "21A") <= 1);
    const double pale = ranking.styles[place_of(ranking, "18B")].best;
    const double strong = ranking.styles[place_of(ranking, "21A")].best;
    CHECK(pale / (pale + strong) > 0.3);
    CHECK(pale / (pale + strong) < 0.7);
}

TEST_CASE("the chances of all styles add up to one, and the first has the largest or nearly so") {
    const Ranking ranking = ranked(demo("slack-tide"));
    double sum = 0.0;
    for (const RankedStyle& style : ranking.styles) {
        sum += style.best;
    }
    CHECK(within(sum, 1.0, 1e-9));
    for (std::size_t place = 1; place < ranking.styles.size(); ++place) {
        CHECK(ranking.styles[place].best < ranking.styles.front().best + 0.05);
    }
}

TEST_CASE("every style is ranked once, variants as one") {
    const Ranking ranking = ranked(american_ale_toward_ipa(1.0));
    const auto is_specialty_ipa = [](const RankedStyle& style) { return style.name.code.starts_with("21B"); };
    CHECK(std::count_if(ranking.styles.begin(), ranking.styles.end(), is_specialty_ipa) == 1);
    CHECK(ranking.styles.size() > 95);
}

// Common practice: smoked malt is entered as a smoked beer, on the style that the beer is without it.
TEST_CASE("a specialty style is offered with its base only where the recipe has what it asks for") {
    Recipe smoked = demo("night-watch");
    CHECK(place_of(ranked(smoked), "32A") == ranked(smoked).styles.size());
    Fermentable malt = pale_ale_malt();
    malt.name = "beech-smoked malt";
    malt.groups = {"smoked"};
    malt.gives.smoke = 1.0;
    smoked.grist.push_back(grist(malt, 1.5, GristUse::mash, 40));
    const Ranking ranking = ranked(smoked);
    const std::size_t place = place_of(ranking, "32A");
    REQUIRE(place < 5);
    CHECK(ranking.styles[place].base.has_value());
    CHECK_FALSE(ranking.styles[place].declarations.empty());
}

// Common practice: clean lager yeast makes no English ale.
TEST_CASE("what is not customary is told and counts, though it takes no points") {
    Recipe recipe = american_ale_toward_ipa(0.0);
    const std::size_t before = place_of(ranked(recipe), "18B");
    recipe.yeasts.front().yeast.name = "german lager";
    const Ranking ranking = ranked(recipe);
    const std::size_t place = place_of(ranking, "18B");
    CHECK(place > before);
    const auto& departures = ranking.styles[place].departures;
    CHECK(std::any_of(departures.begin(), departures.end(), [](const std::string& departure) {
        return departure.find("german lager") != std::string::npos;
    }));
}

TEST_CASE("the declared style keeps its place and its sheet, wherever it comes") {
    const Ranking ranking = ranked(demo("slack-tide"), StyleName{"bjcp-2021", "20C"});
    REQUIRE(ranking.declared);
    CHECK(ranking.styles[*ranking.declared].name.code == "20C");
    CHECK(ranking.styles[*ranking.declared].sheet.has_value());
}

TEST_CASE("what separates the first styles is told with its points in each of them") {
    const Ranking ranking = ranked(demo("slack-tide"));
    REQUIRE_FALSE(ranking.separations.empty());
    for (const Separation& separation : ranking.separations) {
        CHECK(separation.points.size() == 5);
        const auto [low, high] = std::minmax_element(separation.points.begin(), separation.points.end());
        CHECK(*high - *low >= 0.5);
    }
}

TEST_CASE("the same recipe is ranked the same, however its styles were given") {
    std::vector<Style> turned = all_of_the_guide();
    std::reverse(turned.begin(), turned.end());
    const Ranking first = ranked(demo("slack-tide"));
    const Ranking second = rank(demo("slack-tide"), turned, usual_handbook());
    for (std::size_t place = 0; place < 5; ++place) {
        CHECK(first.styles[place].name == second.styles[place].name);
        CHECK(within(first.styles[place].at_risk.median, second.styles[place].at_risk.median, 1e-12));
    }
}

TEST_CASE("the styles of a guide whose codes hold dashes are told apart") {
    std::vector<Style> styles;
    for (const StyleName& name : usual_library().style_names("ba-2025")) {
        styles.push_back(*usual_library().style(name));
    }
    // Brewers Association, Beer Style Guidelines, 2025: its category of North American ales holds 25 styles.
    const Ranking ranking = rank(demo("slack-tide"), styles, usual_handbook());
    const auto of_category_three =
        std::count_if(ranking.styles.begin(), ranking.styles.end(),
                      [](const RankedStyle& style) { return style.name.code.starts_with("03-"); });
    CHECK(of_category_three > 20);
    CHECK(ranking.styles.front().name.code == "03-08");
    // 10-07, a fruit beer that prints numbers, is no place for a beer without fruit.
    CHECK(place_of(ranking, "10-07") == ranking.styles.size());
}

TEST_CASE("a style that names nothing customary is neither favored nor ruled out by that") {
    const Recipe recipe = demo("slack-tide");
    const auto distance_with = [&](const auto& change) {
        Style style = guide_style("21A");
        change(style.custom);
        return rank(recipe, {style}, usual_handbook()).styles.front().distance;
    };
    const double fitting = distance_with([](Custom&) {});
    const double unsaid = distance_with([](Custom& custom) {
        custom.yeast_typical = custom.yeast_possible = {};
        custom.hops_typical = custom.hops_possible = {};
        custom.grist_base = custom.grist_typical = custom.grist_possible = custom.grist_unusual = {};
    });
    const double foreign = distance_with([](Custom& custom) {
        custom.yeast_typical = {"weissbier"};
        custom.yeast_possible = {};
        custom.hops_typical = {"czech"};
        custom.hops_possible = {};
        custom.grist_base = {"pilsner malt"};
    });
    CHECK(fitting < unsaid);
    CHECK(unsaid < foreign);
}

TEST_CASE("a specialty style stands on a style of its own guide") {
    std::vector<Style> styles = all_of_the_guide();
    for (const StyleName& name : usual_library().style_names("ba-2025")) {
        styles.push_back(*usual_library().style(name));
    }
    Recipe recipe = demo("slack-tide");
    ExtraAddition fruit;
    fruit.name = "blackcurrant";
    fruit.kind = ExtraKind::fruit;
    fruit.mass = 1.0 * kilogram;
    recipe.extras.push_back(fruit);
    std::size_t on_a_base = 0;
    for (const RankedStyle& style : rank(recipe, styles, usual_handbook()).styles) {
        if (style.base) {
            CHECK(style.base->guide == style.name.guide);
            ++on_a_base;
        }
    }
    CHECK(on_a_base > 0);
}

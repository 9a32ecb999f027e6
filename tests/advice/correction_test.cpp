#include "advice/correction.hpp"

#include <doctest/doctest.h>

#include <string>
#include <variant>
#include <vector>

#include "advice/cause.hpp"
#include "advice/check.hpp"
#include "advice/lever.hpp"
#include "advice/note.hpp"
#include "judging/guide_habit.hpp"
#include "quantity/text.hpp"
#include "sensing/sense.hpp"
#include "tests/advice/finding_named.hpp"
#include "tests/has.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/judging.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Recipe too_bitter() {
    Recipe recipe = pale_ale();
    recipe.hops = {boiled(magnum(), 60.0, 60.0, 20)};
    return recipe;
}

/// The last mass in a text: that which a correction ends at.
Mass last_mass_in(const std::string& text) {
    const Parsed<Mass> mass = quantity_from<Mass>(text.substr(text.rfind(" to ") + 4));
    REQUIRE(std::holds_alternative<Mass>(mass));
    return std::get<Mass>(mass);
}

double level_at_middle(const Recipe& recipe, Attribute attribute) {
    Deviates middle(1);
    const Beer beer = brew(recipe, middle);
    return sense(beer, usual_palate(), middle).level[attribute].median();
}

/// How far the middle of what comes out lies outside, in steps or in parts of a number.
double steps_out(const Finding& finding) {
    return std::max({finding.level - finding.accepted_high, finding.accepted_low - finding.level, 0.0});
}

}  // namespace

TEST_CASE("a recipe too bitter is told to cut its hops, and cut so far it is as bitter as asked") {
    const Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    const Check checked = check(too_bitter(), style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "flavor.bitterness.above");
    REQUIRE(advised != nullptr);
    REQUIRE(!advised->corrections.empty());
    const std::string& correction = advised->corrections.front();
    CHECK(has(correction, "cut Magnum"));
    Recipe corrected = too_bitter();
    corrected.hops.front().mass = last_mass_in(correction);
    CHECK(corrected.hops.front().mass < 60.0 * gram);
    const double level = level_at_middle(corrected, Attribute::flavor_bitterness);
    CHECK(level <= 4.05);
    CHECK(level >= 3.4);
}

TEST_CASE("too little bitterness asks for more of the hops that give it") {
    Recipe mild = pale_ale();
    mild.hops = {boiled(magnum(), 6.0, 60.0, 20)};
    const Style style = style_that_expects(Attribute::flavor_bitterness, 4.0, 5.0);
    const Check checked = check(mild, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "flavor.bitterness.below");
    REQUIRE(advised != nullptr);
    REQUIRE(!advised->corrections.empty());
    CHECK(has(advised->corrections.front(), "raise Magnum"));
    CHECK(last_mass_in(advised->corrections.front()) > 6.0 * gram);
}

TEST_CASE("bitterness past its numbers is brought back inside them though its word is accepted") {
    Recipe harsh = too_bitter();
    harsh.hops.front().mass = 110.0 * gram;
    Style style = style_that_expects(Attribute::flavor_bitterness, 5.0, 7.0);
    style.ranges.bitterness = Range<Bitterness>{40.0 * ibu, 60.0 * ibu};
    const Check checked = check(harsh, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "flavor.bitterness.above");
    REQUIRE(advised != nullptr);
    REQUIRE(advised->finding.told_by_number);
    REQUIRE(!advised->corrections.empty());
    Recipe corrected = harsh;
    corrected.hops.front().mass = last_mass_in(advised->corrections.front());
    CHECK(in(brew_at_middle(corrected).tasted_bitterness.median(), ibu) <= 61.0);
    CHECK(in(brew_at_middle(corrected).tasted_bitterness.median(), ibu) >= 40.0);
}

TEST_CASE("roast out of place is told to lose its roasted malt") {
    Recipe roasty = pale_ale();
    roasty.grist.push_back(grist(black_malt(), 0.4, GristUse::mash, 12));
    const Style style = style_that_expects(Attribute::flavor_roast, 0.0, 2.0);
    const Check checked = check(roasty, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "flavor.roast.above");
    REQUIRE(advised != nullptr);
    REQUIRE(!advised->corrections.empty());
    CHECK(has(advised->corrections.front(), "cut black malt from 400 g"));
    REQUIRE(!advised->causes.empty());
    CHECK(has(advised->causes.front(), "black malt 100 %"));
}

TEST_CASE("lack of hop aroma asks for hops late or dry") {
    Recipe plain = pale_ale();
    plain.hops = {boiled(magnum(), 15.0, 60.0, 20), boiled(cascade(), 10.0, 60.0, 21)};
    const Style style = style_that_expects(Attribute::aroma_hop, 4.0, 6.0);
    const Check checked = check(plain, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "aroma.hop.below");
    REQUIRE(advised != nullptr);
    REQUIRE(!advised->corrections.empty());
    CHECK(has(advised->corrections.front(), "dry hop"));
    CHECK(advised->corrections.size() <= 2);
}

TEST_CASE("a body too thin asks for a warmer mash, one too full for a cooler one") {
    Recipe recipe = pale_ale();
    const auto correction_for = [&](const char* id, double low, double high) -> std::string {
        const Style style = style_that_expects(Attribute::mouthfeel_body, low, high);
        const Check checked = check(recipe, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
        const AdvisedFinding* advised = finding_named(checked, id);
        REQUIRE(advised != nullptr);
        REQUIRE(!advised->corrections.empty());
        return advised->corrections.front();
    };
    const double body = level_at_middle(recipe, Attribute::mouthfeel_body);
    const std::string thin = correction_for("mouthfeel.body.below", body + 0.45, body + 0.5);
    CHECK((has(thin, "mash at") || has(thin, "carbonate to")));
    const auto degrees_of = [](const std::string& text) {
        return std::stoi(text.substr(text.find("mash at ") + 8));
    };
    if (has(thin, "mash at")) {
        CHECK(degrees_of(thin) > 66);
    }
}

TEST_CASE("where no change reaches the level, general advice is given, or none") {
    Finding finding;
    finding.section = Section::flavor;
    finding.attribute = "smoke";
    finding.direction = Direction::below;
    finding.accepted_low = 3.0;
    finding.accepted_high = 5.0;
    const Tasting now = taste_at_middle(pale_ale(), usual_palate());
    CHECK(corrections_of(finding, now, now.beer, Style(), usual_palate(), PhraseBook(), Reach::all_the_way)
              .empty());
    PhraseBook book;
    book.by_attribute["flavor.smoke"].raise = "use smoked malt";
    const auto corrections =
        corrections_of(finding, now, now.beer, Style(), usual_palate(), book, Reach::all_the_way);
    REQUIRE(corrections.size() == 1);
    CHECK(corrections.front().told == "use smoked malt");
    CHECK_FALSE(corrections.front().recipe);
    CHECK(causes_of(finding, pale_ale(), now.beer).front() == "nothing in the recipe gives it");
}

TEST_CASE("a beer in style has no finding and no advice") {
    Style style = style_that_expects(Attribute::flavor_bitterness, 1.0, 7.0);
    style.expected[Attribute::flavor_roast] = Expectation{0.0, 1.0, false};
    const Check checked = check(pale_ale(), style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    CHECK(checked.findings.empty());
    CHECK(checked.sheet.total.median < 0.1);
}

// Common practice: nobody weighs the last grams of a malt that is to go.
TEST_CASE("an ingredient that would hardly be left is left out") {
    Finding finding;
    finding.section = Section::appearance;
    finding.attribute = "color";
    finding.direction = Direction::above;
    Recipe dark = pale_ale();
    dark.grist.push_back(grist(black_malt(), 0.12, GristUse::mash, 12));
    const Beer beer = brew_at_middle(dark);
    bool black_malt_is_a_lever = false;
    for (const Lever& lever : levers_for(finding, dark, beer, Style())) {
        if (has(lever.told(0.5), "black malt")) {
            black_malt_is_a_lever = true;
            CHECK(has(lever.told(0.02), "leave out black malt"));
            CHECK(has(lever.told(0.2), "cut black malt"));
        }
    }
    CHECK(black_malt_is_a_lever);
}

// Common practice: what there is too much of is cut and what there is too little of is added, also where a
// guide words a style by habit, far from what its numbers give.
TEST_CASE("no correction of a hop, a malt or of bitterness turns the wrong way") {
    constexpr std::size_t every = 9;
    int turned = 0;
    check_demo_beers(every, [&turned](const std::string& name, const Check& checked) {
        for (const AdvisedFinding& advised : checked.findings) {
            const bool above = advised.finding.direction == Direction::above;
            for (const std::string& correction : advised.corrections) {
                CAPTURE(name);
                CAPTURE(checked.style.name);
                CAPTURE(id_of(advised.finding));
                CAPTURE(correction);
                const bool takes = has(correction, "cut ") || has(correction, "leave out ");
                const bool gives = has(correction, "raise ") || has(correction, "add ");
                if (has(correction, " g") && (takes || gives)) {
                    CHECK(takes == above);
                    ++turned;
                }
            }
        }
    });
    CHECK(turned > 100);
}

TEST_CASE("a change that is asked for does what it is asked for, by the number and by the word") {
    constexpr std::size_t every = 14;
    int made = 0;
    int half_made = 0;
    check_demo_beers(every, [&made, &half_made](const std::string& name, const Check& now) {
        const Tasting at_middle = taste_at_middle(now.recipe, usual_palate());
        for (const Finding& finding : now.sheet.findings) {
            const bool is_traced =
                finding.told_by_number || attribute_named(finding.section, finding.attribute);
            if (!is_traced || is_likely_inside(finding)) {
                continue;
            }
            for (const Correction& correction :
                 corrections_of(finding, at_middle, now.beer, now.style, usual_palate(), usual_phrases(),
                                Reach::half_way_too)) {
                if (!correction.recipe) {
                    continue;
                }
                CAPTURE(name);
                CAPTURE(now.style.name);
                CAPTURE(id_of(finding));
                CAPTURE(correction.told);
                const Check after = check(*correction.recipe, now.style, usual_handbook());
                const AdvisedFinding* still = finding_named(after, id_of(finding));
                if (correction.goes_half_way) {
                    const double left = still == nullptr ? 0.0 : steps_out(still->finding);
                    CHECK(left < 0.75 * steps_out(finding));
                    ++half_made;
                } else {
                    CHECK((still == nullptr || is_likely_inside(still->finding)));
                    ++made;
                }
            }
        }
    });
    CHECK(made > 200);
    CHECK(half_made > 20);
}

// Common practice: a brewer cuts hops to what the guide prints and a laboratory reads, of which dry hops
// taste less bitter than they read.
TEST_CASE("what is cut for its bitterness reads within the printed range") {
    const Check checked = check(demo("slack-tide"), guide_style("21A"), usual_handbook());
    const AdvisedFinding* advised = finding_named(checked, "flavor.bitterness.above");
    REQUIRE(advised != nullptr);
    REQUIRE(advised->finding.told_by_number);
    const auto corrections =
        corrections_of(advised->finding, taste_at_middle(checked.recipe, usual_palate()), checked.beer,
                       checked.style, usual_palate(), usual_phrases(), Reach::half_way_too);
    REQUIRE(!corrections.empty());
    REQUIRE(corrections.front().recipe);
    const Beer cut = check(*corrections.front().recipe, checked.style, usual_handbook()).beer;
    CHECK(cut.bitterness.total.median() < 70.5 * ibu);
    CHECK(cut.bitterness.total.median() > 60.0 * ibu);
    CHECK(cut.tasted_bitterness.median() < cut.bitterness.total.median());
}

TEST_CASE("a correction allows for a guide's habit of wording a style") {
    REQUIRE(guide_habits(guide_style("20A"), usual_palate())[Attribute::flavor_roast] < -0.2);
    const Check checked = check(demo("coal-barge"), guide_style("20A"), usual_handbook());
    const AdvisedFinding* advised = finding_named(checked, "flavor.roast.above");
    REQUIRE(advised != nullptr);
    REQUIRE(advised->corrections.size() == 1);
    CHECK(has(advised->corrections.front(), "cut chocolate malt"));
}

TEST_CASE("a level that many settings give is reached by the least change") {
    Recipe strong = pale_ale();
    strong.grist.front().mass = 6.2 * kilogram;
    const Style style = style_that_expects(Attribute::mouthfeel_warmth, 0.0, 0.0);
    const Check checked = check(strong, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "mouthfeel.warmth.above");
    REQUIRE(advised != nullptr);
    REQUIRE(!advised->corrections.empty());
    CAPTURE(advised->corrections.front());
    Mass all = 0.0 * kilogram;
    for (const GristAddition& addition : strong.grist) {
        all += addition.mass;
    }
    const double share = in(last_mass_in(advised->corrections.front()), all);
    const auto warmth_at = [&](double of_the_grist) {
        Recipe corrected = strong;
        for (GristAddition& addition : corrected.grist) {
            addition.mass *= of_the_grist;
        }
        return level_at_middle(corrected, Attribute::mouthfeel_warmth);
    };
    CHECK(warmth_at(share) <= 0.05);
    CHECK(warmth_at(1.05 * share) > 0.05);
}

TEST_CASE("no correction takes the numbers of the style further out of their ranges") {
    Recipe mild = pale_ale();
    mild.hops = {boiled(magnum(), 6.0, 60.0, 20)};
    Style style = style_that_expects(Attribute::flavor_bitterness, 4.0, 5.0);
    const auto corrections = [&] {
        const Check checked = check(mild, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
        const AdvisedFinding* advised = finding_named(checked, "flavor.bitterness.below");
        REQUIRE(advised != nullptr);
        return advised->corrections;
    };
    REQUIRE(!corrections().empty());
    style.ranges.bitterness = Range<Bitterness>{5.0 * ibu, 15.0 * ibu};
    CHECK(corrections().empty());
    style.ranges.bitterness = Range<Bitterness>{5.0 * ibu, 60.0 * ibu};
    CHECK(!corrections().empty());
}

namespace {

Finding finding_of(Section section, const std::string& attribute, Direction direction) {
    Finding finding;
    finding.section = section;
    finding.attribute = attribute;
    finding.direction = direction;
    return finding;
}

/// What the levers for a finding would tell at a setting, in their order.
std::vector<std::string> told_for(const Finding& finding, const Recipe& recipe, double setting) {
    std::vector<std::string> told;
    for (const Lever& lever : levers_for(finding, recipe, brew_at_middle(recipe), Style())) {
        told.push_back(lever.told(setting));
    }
    return told;
}

}  // namespace

// Common practice: what is boiled for half an hour and longer bitters, what comes later is for the nose.
TEST_CASE("bitterness is turned by the hop that is there for it, though a late one gives more") {
    Recipe recipe = pale_ale();
    recipe.hops = {boiled(magnum(), 4.0, 60.0, 20), boiled(cascade(), 90.0, 15.0, 21)};
    for (const char* attribute : {"bitterness", "balance"}) {
        const auto told = told_for(finding_of(Section::flavor, attribute, Direction::below), recipe, 2.0);
        REQUIRE(told.size() == 1);
        CHECK(has(told.front(), "raise Magnum at 60 min from 4 g to 8 g"));
    }
    for (const HopUse use : {HopUse::first_wort, HopUse::mash}) {
        recipe.hops.front().use = use;
        recipe.hops.front().mass = 40.0 * gram;
        const auto told = told_for(finding_of(Section::flavor, "bitterness", Direction::below), recipe, 2.0);
        REQUIRE(told.size() == 1);
        CAPTURE(told.front());
        CHECK(has(told.front(), "raise Magnum"));
    }
    recipe.hops = {boiled(cascade(), 90.0, 15.0, 21)};
    const auto told = told_for(finding_of(Section::flavor, "bitterness", Direction::below), recipe, 2.0);
    REQUIRE(told.size() == 1);
    CHECK(has(told.front(), "raise Cascade at 15 min"));
}

TEST_CASE("late hops of which none alone is enough are cut together, and bittering hops are left") {
    Recipe recipe = pale_ale();
    recipe.hops = {boiled(magnum(), 20.0, 60.0, 20), dry_hopped(cascade(), 44.0, 3.0, 21),
                   dry_hopped(cascade(), 42.0, 3.0, 22), dry_hopped(cascade(), 40.0, 3.0, 23)};
    const auto told = told_for(finding_of(Section::aroma, "hop", Direction::above), recipe, 0.5);
    REQUIRE(told.size() == 2);
    CHECK(told.front() == "cut Cascade as dry hop from 44 g to 22 g");
    CHECK(told.back() ==
          "cut Cascade as dry hop from 44 g to 22 g, Cascade as dry hop from 42 g to 21 g and Cascade as dry "
          "hop from 40 g to 20 g");
    const auto correction_to_a_step_less = [](const Recipe& hopped) {
        const double level = level_at_middle(hopped, Attribute::aroma_hop);
        const Style style = style_that_expects(Attribute::aroma_hop, 0.0, level - 0.9);
        const Check checked = check(hopped, style, Handbook{fifty_points(), usual_palate(), PhraseBook()});
        const AdvisedFinding* advised = finding_named(checked, "aroma.hop.above");
        REQUIRE(advised != nullptr);
        REQUIRE(advised->corrections.size() == 1);
        return advised->corrections.front();
    };
    CHECK(has(correction_to_a_step_less(recipe), " and "));
    recipe.hops[2].mass = recipe.hops[3].mass = 16.0 * gram;
    CHECK(!has(correction_to_a_step_less(recipe), " and "));
}

// Common practice: a mash-out near 76 °C and a protein rest near 50 °C convert next to nothing.
TEST_CASE("the one rest that converts is turned, and a mash of two such rests is left as it is") {
    const auto rest = [](double degrees) {
        return MashRest{.temperature = celsius(degrees), .time = 30.0 * minute};
    };
    const Finding thin = finding_of(Section::mouthfeel, "body", Direction::below);
    Recipe recipe = pale_ale();
    recipe.mash = {rest(50.0), rest(65.0), rest(76.0)};
    const auto levers = levers_for(thin, recipe, brew_at_middle(recipe), Style());
    REQUIRE(levers.size() == 1);
    CHECK(levers.front().told(3.0) == "mash at 68 °C instead of 65 °C");
    const Recipe warmer = levers.front().at(3.0);
    CHECK(within(in_celsius(warmer.mash[0].temperature), 50.0, 1e-9));
    CHECK(within(in_celsius(warmer.mash[1].temperature), 68.0, 1e-9));
    CHECK(within(in_celsius(warmer.mash[2].temperature), 76.0, 1e-9));
    recipe.mash = {rest(62.0), rest(72.0)};
    CHECK(levers_for(thin, recipe, brew_at_middle(recipe), Style()).empty());
}

// Common practice: much hop matter on the cold side is what dries a pale beer.
TEST_CASE("what dries is traced to the dry hops or to the roast that bring it, and cut there") {
    const Style style = style_that_expects(Attribute::mouthfeel_astringency, 0.0, 0.0);
    Recipe hoppy = pale_ale();
    hoppy.hops.push_back(boiled(magnum(), 400.0, 0.0, 30));
    hoppy.hops.back().use = HopUse::dry_hop;
    hoppy.hops.back().time = 3.0 * day;
    const Check checked =
        check(hoppy, style, Handbook{usual_handbook().score_sheet, usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "mouthfeel.astringency.above");
    REQUIRE(advised != nullptr);
    REQUIRE(!advised->causes.empty());
    CHECK(advised->causes.front() == "Magnum as dry hop 100 %");
    REQUIRE(!advised->corrections.empty());
    CHECK(has(advised->corrections.front(), "cut Magnum as dry hop"));

    Recipe both = hoppy;
    both.grist.push_back(grist(black_malt(), 1.2, GristUse::mash, 40));
    const Check dark =
        check(both, style, Handbook{usual_handbook().score_sheet, usual_palate(), PhraseBook()});
    const AdvisedFinding* of_both = finding_named(dark, "mouthfeel.astringency.above");
    REQUIRE(of_both != nullptr);
    REQUIRE(of_both->causes.size() == 2);
    CHECK(has(of_both->causes.front(), "black malt"));
    CHECK(has(of_both->causes.back(), "Magnum as dry hop"));

    // Half of it each: either is cut to what is not noticed any more, and no further than to nothing.
    for (double grams = 115.0; grams <= 145.0; grams += 5.0) {
        Recipe two = hoppy;
        two.hops.back().mass = grams * gram;
        two.hops.push_back(two.hops.back());
        two.hops.back().hop.name = "Citra";
        two.hops.back().position.line = 31;
        const Check twice =
            check(two, style, Handbook{usual_handbook().score_sheet, usual_palate(), PhraseBook()});
        const AdvisedFinding* of_two = finding_named(twice, "mouthfeel.astringency.above");
        CAPTURE(grams);
        REQUIRE(of_two != nullptr);
        REQUIRE(!of_two->corrections.empty());
        CHECK(has(of_two->corrections.front(), "as dry hop from"));
    }
}

TEST_CASE("creaminess is traced to the grain and the lactose that give it, and cut there") {
    const Style style = style_that_expects(Attribute::mouthfeel_creaminess, 0.0, 3.0);
    Recipe creamy = pale_ale();
    Fermentable oats = pale_ale_malt();
    oats.name = "flaked oats";
    oats.kind = FermentableKind::adjunct;
    oats.gives = Contribution{};
    oats.gives.body = 1.0;
    creamy.grist.push_back(grist(oats, 1.0, GristUse::mash, 50));
    creamy.grist.push_back(grist(lactose(), 0.2, GristUse::boil, 51));
    const Check checked =
        check(creamy, style, Handbook{usual_handbook().score_sheet, usual_palate(), PhraseBook()});
    const AdvisedFinding* advised = finding_named(checked, "mouthfeel.creaminess.above");
    REQUIRE(advised != nullptr);
    REQUIRE(advised->causes.size() == 3);
    CHECK(has(advised->causes[1], "flaked oats"));
    CHECK(has(advised->causes[2], "lactose"));
    REQUIRE(!advised->corrections.empty());
    CHECK(has(advised->corrections.front(), "cut flaked oats"));
}

// Bamforth, Journal of the Institute of Brewing 110, 2004: alcohol and adjuncts without protein cost foam.
TEST_CASE("foam that sinks is traced to strength and to sugar, where there is much of them") {
    Recipe strong = pale_ale();
    strong.grist.push_back(grist(sucrose(), 2.5, GristUse::boil, 60));
    const auto causes = [](const Recipe& recipe) {
        return settings_behind("head_retention", recipe, brew_at_middle(recipe));
    };
    CHECK(causes(pale_ale()).size() == 1);
    const std::vector<std::string> behind = causes(strong);
    REQUIRE(behind.size() == 3);
    CHECK(has(behind[1], "% alcohol"));
    CHECK(has(behind[2], "of the extract from sugar, corn or rice"));
    Beer sour = brew_at_middle(pale_ale());
    sour.drivers.sour = always(4.0);
    CHECK(settings_behind("head_retention", pale_ale(), sour).back() == "sourness");
}

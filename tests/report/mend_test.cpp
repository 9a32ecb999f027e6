#include "advice/mend.hpp"

#include <doctest/doctest.h>

#include <string>

#include "base/text.hpp"
#include "report/mend_json.hpp"
#include "report/mend_text.hpp"
#include "tests/has.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/recipes.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// A mending made by hand: what is told is all that matters here.
Mending two_changes() {
    Mending mending;
    mending.recipe = pale_ale();
    mending.recipe.file = "mooring.yaml";
    mending.style = guide_style("18B");
    mending.beer = brew_with(mending.recipe, 64);
    mending.sheet.total = {6.0, 4.0, 8.0};
    mending.wanted = 2.0;
    mending.target = 2.0;
    Proposal proposal;
    proposal.changes = {{"a malt with quite a long name, crushed by hand on the day", 550.0, 0.0, "g"},
                        {"yeast", std::string("english ale"), std::string("german lager"), ""}};
    proposal.beer = mending.beer;
    proposal.sheet.total = {1.2, 0.5, 3.0};
    proposal.no_longer_measured = {"original gravity", "color"};
    proposal.cautions = {{"pressure", "Mind the bottles."}};
    mending.proposals = {proposal};
    return mending;
}

}  // namespace

TEST_CASE("a mending is told in lines that fit, with what it drops and warns of") {
    for (const std::size_t width : {std::size_t{60}, std::size_t{80}, std::size_t{120}}) {
        const TextStyle style{.width = width, .color = false, .ascii = true};
        const std::string text = mend_text(two_changes(), usual_score_sheet(), style);
        for (const std::string_view line : split(text, "\n")) {
            CHECK(character_count(line) <= width);
        }
        CHECK(has(text, "left out"));
        CHECK(has(text, "german lager"));
        CHECK(has(text, "Measured before, and estimated from here on"));
        CHECK(has(text, "Mind the bottles."));
    }
}

TEST_CASE("a target that is out of reach is told plainly") {
    Mending mending = two_changes();
    mending.target = 3.0;
    const TextStyle style{.width = 100, .color = false, .ascii = true};
    CHECK(has(mend_text(mending, usual_score_sheet(), style), "at least to half, 3.0"));
    mending.proposals.clear();
    CHECK(has(mend_text(mending, usual_score_sheet(), style), "no four changes"));
    mending.stage = Stage::brewed;
    CHECK(has(mend_text(mending, usual_score_sheet(), style), "nothing that a finished beer allows"));
}

TEST_CASE("a change in JSON is a number with its unit, or a word without") {
    const Json document = mend_json(two_changes(), usual_score_sheet());
    CHECK(document["format"] == "entrywise/mend/1");
    const Json& changes = document["proposals"][0]["changes"];
    CHECK(changes[0]["from"] == 550.0);
    CHECK(changes[0]["to"] == 0.0);
    CHECK(changes[0]["unit"] == "g");
    CHECK(changes[1]["from"] == "english ale");
    CHECK(changes[1]["to"] == "german lager");
    CHECK(changes[1]["unit"].is_null());
    CHECK(document["proposals"][0]["before"]["at_risk"]["median"] == 6.0);
    CHECK(document["proposals"][0]["after"]["at_risk"]["median"] == 1.2);
}

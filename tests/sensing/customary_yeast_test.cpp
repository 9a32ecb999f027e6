#include "sensing/customary_yeast.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/support/agreement.hpp"
#include "tests/support/guide.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Custom of(std::vector<std::string> yeasts) {
    Custom custom;
    custom.yeast_typical = std::move(yeasts);
    return custom;
}

constexpr SpecificGravity usual_gravity = 1.050 * specific_gravity;

}  // namespace

TEST_CASE("what customary yeasts give is that of the classes of the same name") {
    int known = 0;
    for (const char* const guide : {"bjcp-2021", "ba-2025"}) {
        for (const Style& style : styles_of(guide)) {
            for (const std::string& name : style.custom.yeast_typical) {
                const auto yeast = usual_library().ingredients().yeast(name);
                if (!yeast) {
                    continue;
                }
                CAPTURE(name);
                const auto levels = levels_of_yeast(name);
                REQUIRE(levels);
                CHECK(levels->ester == 0.5 * (yeast->ester.low + yeast->ester.high));
                CHECK(levels->phenol == 0.5 * (yeast->phenol.low + yeast->phenol.high));
                CHECK(levels->diacetyl == 0.5 * (yeast->diacetyl.low + yeast->diacetyl.high));
                CHECK(levels->sulfur == 0.5 * (yeast->sulfur.low + yeast->sulfur.high));
                ++known;
            }
        }
    }
    CHECK(known > 250);
}

TEST_CASE("a style of several yeasts stands between them, and bacteria do not make it clean") {
    const auto between = customary_yeast(of({"american ale", "english ale"}), usual_gravity);
    REQUIRE(between);
    CHECK(within(between->ester, 2.25, 1e-9));
    const auto soured = customary_yeast(of({"lactic culture", "saison"}), usual_gravity);
    REQUIRE(soured);
    CHECK(within(soured->phenol, 3.5, 1e-9));
    CHECK(customary_yeast(of({"lactic culture"}), usual_gravity)->ester == 0.0);
    CHECK_FALSE(customary_yeast(of({"any"}), usual_gravity));
    CHECK_FALSE(customary_yeast(of({}), usual_gravity));
    CHECK(customary_yeast(of({"english ale"}), 1.090 * specific_gravity)->ester > 3.5);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, and Brewers Association, Beer Style
// Guidelines, 2025.
TEST_CASE("customary yeasts tell the esters and the phenols that guides ask for") {
    const auto first = agreement_with("bjcp-2021");
    const auto second = agreement_with("ba-2025");
    for (const Attribute attribute : {Attribute::aroma_ester, Attribute::flavor_ester}) {
        CHECK(first.at(attribute).levels() >= 0.92);
        CHECK(second.at(attribute).levels() >= 0.86);
    }
    for (const Attribute attribute : {Attribute::aroma_phenol, Attribute::flavor_phenol}) {
        CHECK(first.at(attribute).levels() >= 0.98);
        CHECK(second.at(attribute).levels() >= 0.98);
    }
}

TEST_CASE("customary yeasts, handled well, leave no more diacetyl and sulfur than guides bear") {
    for (const char* const guide : {"bjcp-2021", "ba-2025"}) {
        const auto agreements = agreement_with(guide);
        CHECK(agreements.at(Attribute::aroma_diacetyl).levels() >= 0.98);
        CHECK(agreements.at(Attribute::flavor_diacetyl).levels() >= 0.98);
    }
    CHECK(agreement_with("ba-2025").at(Attribute::aroma_sulfur).levels() >= 0.98);
}

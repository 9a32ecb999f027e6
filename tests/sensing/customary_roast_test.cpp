#include "sensing/customary_roast.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/support/agreement.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double roast_in(const std::string& code) {
    return in(middle_of(guide_style(code))->roast, gram_per_liter);
}

}  // namespace

TEST_CASE("the names of roasted grain are those of the ingredients") {
    int with_husk = 0;
    int without_husk = 0;
    for (const Style& style : styles_of("bjcp-2021")) {
        for (const auto& names :
             {style.custom.grist_base, style.custom.grist_typical, style.custom.grist_possible}) {
            for (const std::string& name : names) {
                const auto malt = usual_library().ingredients().fermentable(name);
                if (!malt) {
                    continue;
                }
                CAPTURE(name);
                CHECK((is_roasted_grain(name) || is_dehusked_roasted_grain(name)) ==
                      (malt->kind == FermentableKind::roasted));
                with_husk += is_roasted_grain(name) ? 1 : 0;
                if (is_dehusked_roasted_grain(name)) {
                    const auto black = usual_library().ingredients().fermentable("black malt");
                    const double color = malt->color.middle / black->color.middle;
                    CHECK(malt->gives.roast / color == doctest::Approx(roast_without_husk).epsilon(0.05));
                    ++without_husk;
                }
            }
        }
    }
    CHECK(with_husk > 20);
    CHECK(without_husk > 20);
}

// Common practice: a black IPA is darkened with grain that has no husk, so that it tastes of less roast than
// a stout of its color; kilned and crystal malt alone make an amber beer.
TEST_CASE("customary grain tells how much of a color is tasted as roast") {
    Custom without_husk;
    without_husk.grist_typical = {"crystal", "dehusked roasted malt dark"};
    Custom with_both = without_husk;
    with_both.grist_typical.emplace_back("roasted barley");
    const Color black = 35.0 * srm;
    CHECK(customary_roast(without_husk, black) / customary_roast(Custom(), black) ==
          doctest::Approx(roast_without_husk));
    CHECK(customary_roast(with_both, black) == customary_roast(Custom(), black));
    CHECK(customary_roast(Custom(), 12.0 * srm) == Concentration());
    CHECK(roast_in("21B-black") < 0.7 * roast_in("15B"));
    CHECK(roast_in("15B") > 15.0);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, and Brewers Association, Beer Style
// Guidelines, 2025, of the styles that word roast themselves.
TEST_CASE("customary grain tells the roast that guides ask for") {
    const auto of = [](const std::string& guide) {
        Agreement agreement;
        for (const Style& style : styles_of(guide)) {
            const auto& expectation = style.expected[Attribute::flavor_roast];
            const auto middle = middle_of(style);
            if (middle && expectation && !expectation->assumed) {
                agreement.add(*level_of(Attribute::flavor_roast, style, *middle), *expectation);
            }
        }
        return agreement;
    };
    CHECK(of("bjcp-2021").count > 45);
    CHECK(of("bjcp-2021").levels() >= 0.94);
    CHECK(of("ba-2025").count > 20);
    CHECK(of("ba-2025").words() >= 0.90);
}

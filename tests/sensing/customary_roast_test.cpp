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

// Common practice: of some 200 g of malt in a liter an Irish red owes its color to 1 to 3 % of roasted
// barley, a brown ale to 3 to 6 % of chocolate malt, which tastes of four fifths as much; a Belgian dark
// strong ale to candi, a dunkel to Munich malt; a black IPA is darkened with grain that has no husk, so that
// it tastes of less roast than a stout.
TEST_CASE("customary grain tells how much of a color is roast") {
    CHECK(roast_in("15A") > 2.0);
    CHECK(roast_in("15A") < 6.0);
    CHECK(roast_in("13B") > 4.8);
    CHECK(roast_in("13B") < 9.6);
    CHECK(roast_in("26D") == 0.0);
    CHECK(roast_in("6C") == 0.0);
    CHECK(roast_in("8A") < 0.5 * roast_in("13C"));
    CHECK(roast_in("21B-black") < 0.6 * roast_in("15B"));
    CHECK(customary_roast(Custom(), 4.0 * srm) == Concentration());
}

// Common practice: Munich and crystal malt alone make beers of up to some 17 SRM; what is darker has a pinch
// of roasted malt.
TEST_CASE("a style without roasted grain tastes of it only where its color asks for a pinch") {
    CHECK(customary_roast(Custom(), 17.0 * srm) == Concentration());
    const double pinch = in(customary_roast(Custom(), 21.0 * srm), gram_per_liter);
    CHECK(pinch > 0.5);
    CHECK(pinch < 3.0);
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

#include "sensing/customary_toast.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/support/agreement.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double toast_in(const std::string& code) {
    const Style style = guide_style(code);
    return in(middle_of(style)->toast, gram_per_liter);
}

}  // namespace

TEST_CASE("the toast of customary malts is that of the ingredients of the same name") {
    int known = 0;
    for (const Style& style : styles_of("bjcp-2021")) {
        for (const auto& names : {style.custom.grist_base, style.custom.grist_typical}) {
            for (const std::string& name : names) {
                const auto malt = usual_library().ingredients().fermentable(name);
                if (malt && malt->kind != FermentableKind::roasted &&
                    malt->kind != FermentableKind::crystal) {
                    CAPTURE(name);
                    CHECK(toast_of_malt(name).value_or(0.0) == malt->gives.toast);
                    ++known;
                }
            }
        }
    }
    CHECK(known > 200);
}

// Common practice: a Munich dunkel is brewed of Munich malt, a Märzen of a good part of it, a helles of
// little or none.
TEST_CASE("customary malts make a dunkel toastier than a Märzen, and that than a helles") {
    CHECK(toast_in("8A") > toast_in("6A"));
    CHECK(toast_in("6A") > 2.0 * toast_in("4A"));
    CHECK(customary_toast(Custom(), 12.0 * plato) == Concentration());
    Custom munich;
    munich.grist_base = {"munich malt light"};
    CHECK(customary_toast(munich, 16.0 * plato) > 1.3 * customary_toast(munich, 12.0 * plato));
}

// Common practice: a hazy IPA may be brewed of pale ale malt alone.
TEST_CASE("of several pale malts the toastiest is as customary as a blend") {
    Custom one;
    one.grist_base = {"pale ale malt"};
    Custom any;
    any.grist_base = {"pilsner malt", "pale malt", "pale ale malt"};
    CHECK(customary_toast(any, 15.0 * plato) == customary_toast(one, 15.0 * plato));
    Custom half_munich;
    half_munich.grist_base = {"pilsner malt", "munich malt light"};
    Custom munich;
    munich.grist_base = {"munich malt light"};
    CHECK(2.0 * customary_toast(half_munich, 15.0 * plato) == customary_toast(munich, 15.0 * plato));
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, and Brewers Association, Beer Style
// Guidelines, 2025.
TEST_CASE("customary malts tell the toast that guides ask for") {
    CHECK(agreement_with("bjcp-2021").at(Attribute::flavor_toast).levels() >= 0.88);
    CHECK(agreement_with("ba-2025").at(Attribute::flavor_toast).levels() >= 0.82);
}

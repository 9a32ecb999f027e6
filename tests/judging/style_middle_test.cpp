#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "sensing/middle_of_style.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/middle.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

struct Standing {
    std::string code;
    double own_points = 0.0;
    std::size_t better = 0;  ///< styles in which the beer loses less
};

std::vector<Standing> standings() {
    const std::vector<Style>& styles = all_of_the_guide();
    std::vector<Standing> result;
    for (const Style& style : styles) {
        const auto middle = middle_of(style);
        if (!middle) {
            continue;
        }
        const Beer beer = beer_of(*middle);
        const Profile profile = profile_of(style, *middle);
        Standing standing{style.code, judge(beer, profile, style, usual_score_sheet()).total.median};
        standing.better =
            static_cast<std::size_t>(std::count_if(styles.begin(), styles.end(), [&](const Style& other) {
                return !other.varies && judge(beer, profile, other, usual_score_sheet()).total.median <
                                            standing.own_points - 1e-9;
            }));
        result.push_back(standing);
    }
    return result;
}

}  // namespace

// Beer Judge Certification Program, Beer Style Guidelines, 2021: numbers and coded words. A beer in the
// middle of all that a style says must be at home there.
TEST_CASE("a beer in the middle of a style loses next to nothing in it, and in few styles less") {
    const std::vector<Standing> all = standings();
    CHECK(all.size() >= 110);
    for (const Standing& standing : all) {
        CAPTURE(standing.code);
        CHECK(standing.own_points < 1.5);
        CHECK(standing.better < 3);
    }
}

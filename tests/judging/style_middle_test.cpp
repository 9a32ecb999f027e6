#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "reading/library.hpp"
#include "reading/score_sheet_reader.hpp"
#include "sensing/middle_of_style.hpp"
#include "tests/support/judging.hpp"
#include "tests/support/palate.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

const Library& library() {
    static const Library known(embedded_documents());
    return known;
}

const ScoreSheet& score_sheet() {
    static const ScoreSheet sheet =
        *read_score_sheet(*library().document("styles/sheet.yaml"), "styles/sheet.yaml");
    return sheet;
}

std::vector<Style> all_styles() {
    std::vector<Style> styles;
    for (const StyleName& name : library().style_names("bjcp-2021")) {
        styles.push_back(*library().style(name));
    }
    return styles;
}

Beer beer_of(const MiddleOfStyle& middle) {
    Beer beer = plain_beer();
    beer.original_gravity.total = always(middle.original_gravity);
    beer.original_extract = always(middle.original_extract);
    beer.real_extract = always(middle.real_extract);
    beer.apparent_attenuation = always(middle.attenuation);
    beer.final_gravity = always(middle.final_gravity);
    beer.alcohol = always(middle.alcohol);
    beer.bitterness.total = always(middle.bitterness);
    beer.color.total = always(middle.color);
    beer.carbonation = always(middle.carbonation);
    return beer;
}

/// What numbers decide is at the level that they give; the rest is in the middle of what the style accepts.
/// What the style does not describe is left out of the judging.
Profile profile_of(const Style& style, const MiddleOfStyle& middle) {
    Profile profile = plain_profile();
    for (const Attribute attribute : all_attributes()) {
        const auto by_numbers = level_at_middle(attribute, middle, usual_palate());
        const auto& expectation = style.expected[attribute];
        if (by_numbers) {
            profile.level[attribute] = always(*by_numbers);
        } else if (expectation) {
            profile.level[attribute] = always(0.5 * (expectation->low + expectation->high));
        } else {
            profile.untold.push_back(attribute);
        }
    }
    return profile;
}

struct Standing {
    std::string code;
    double own_points = 0.0;
    std::size_t better = 0;  ///< styles in which the beer loses less
};

std::vector<Standing> standings() {
    const std::vector<Style> styles = all_styles();
    std::vector<Standing> result;
    for (const Style& style : styles) {
        const auto middle = middle_of(style);
        if (!middle) {
            continue;
        }
        const Beer beer = beer_of(*middle);
        const Profile profile = profile_of(style, *middle);
        Standing standing{style.code, judge(beer, profile, style, score_sheet()).total.median};
        standing.better =
            static_cast<std::size_t>(std::count_if(styles.begin(), styles.end(), [&](const Style& other) {
                return !other.varies &&
                       judge(beer, profile, other, score_sheet()).total.median < standing.own_points - 1e-9;
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

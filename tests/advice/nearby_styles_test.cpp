#include "advice/nearby_styles.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/support/judging.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Style style_at(const std::string& code, double alcohol, double bitterness) {
    Style style;
    style.code = code;
    style.ranges.alcohol =
        Range<AlcoholByVolume>{(alcohol - 0.5) * percent_by_volume, (alcohol + 0.5) * percent_by_volume};
    style.ranges.bitterness = Range<Bitterness>{(bitterness - 5.0) * ibu, (bitterness + 5.0) * ibu};
    return style;
}

std::vector<std::string> codes_near(const Beer& beer, const std::vector<Style>& styles, const Style& entered,
                                    std::size_t at_most) {
    std::vector<std::string> codes;
    for (const Style& style : nearby_styles(beer, styles, entered, at_most)) {
        codes.push_back(style.code);
    }
    return codes;
}

}  // namespace

// The plain beer has 5.1 % vol, 35 IBU and 8 SRM.
TEST_CASE("nearby styles come nearest first, without the one that is entered") {
    const std::vector<Style> styles{style_at("far", 9.0, 80.0), style_at("near", 5.6, 40.0),
                                    style_at("in", 5.1, 36.0), style_at("entered", 5.0, 35.0)};
    CHECK(codes_near(plain_beer(), styles, styles.back(), 2) == std::vector<std::string>{"in", "near"});
    CHECK(codes_near(plain_beer(), styles, styles.back(), 9) ==
          std::vector<std::string>{"in", "near", "far"});
}

TEST_CASE("of two styles as strong and as bitter the one of the beer's color is nearer") {
    Style black = style_at("black", 5.1, 35.0);
    black.ranges.color = Range<Color>{30.0 * srm, 40.0 * srm};
    Style amber = style_at("amber", 5.1, 35.0);
    amber.ranges.color = Range<Color>{6.0 * srm, 12.0 * srm};
    CHECK(codes_near(plain_beer(), {black, amber}, Style(), 1) == std::vector<std::string>{"amber"});
}

TEST_CASE("variants and styles without ranges have no place") {
    Style open = style_at("open", 5.1, 35.0);
    open.ranges.bitterness->high.reset();
    const std::vector<Style> styles{style_at("21B", 5.1, 35.0), style_at("21B-red", 5.1, 35.0),
                                    style_at("03-08", 5.1, 35.0), open};
    CHECK(codes_near(plain_beer(), styles, Style(), 9) == std::vector<std::string>{"21B", "03-08"});
}

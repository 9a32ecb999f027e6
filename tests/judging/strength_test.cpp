#include "judging/strength.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "tests/support/guide.hpp"
#include "tests/support/middle.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Sheet at_home_in(const std::string& code, double hop_levels) {
    const Style style = guide_style(code);
    const MiddleOfStyle middle = *middle_of(style);
    Profile profile = profile_of(style, middle);
    profile.level[Attribute::aroma_hop] = always(hop_levels);
    profile.level[Attribute::flavor_hop] = always(hop_levels);
    return judge(beer_of(middle), profile, style, usual_score_sheet());
}

bool names(const std::vector<Strength>& strengths, std::string_view word) {
    return std::any_of(strengths.begin(), strengths.end(),
                       [&](const Strength& each) { return word_of(each.attribute) == word; });
}

}  // namespace

// Beer Judge Certification Program, Beer Style Guidelines, 2021: an American IPA is known by its hops.
TEST_CASE("an American IPA is praised for its hops where they are right, and not where they are missed") {
    CHECK(names(at_home_in("21A", 5.5).strengths, "hop"));
    const Sheet weak = at_home_in("21A", 2.0);
    CHECK_FALSE(names(weak.strengths, "hop"));
    CHECK(std::any_of(weak.findings.begin(), weak.findings.end(),
                      [](const Finding& finding) { return finding.attribute == "hop"; }));
}

TEST_CASE("at most three strengths are told, each of another name") {
    for (const StyleName& name : usual_library().style_names("bjcp-2021")) {
        const Style style = guide_style(name.code);
        const auto middle = middle_of(style);
        if (!middle) {
            continue;
        }
        CAPTURE(name.code);
        const Sheet sheet = judge(beer_of(*middle), profile_of(style, *middle), style, usual_score_sheet());
        CHECK(sheet.strengths.size() <= 3);
        std::set<std::string_view> words;
        for (const Strength& strength : sheet.strengths) {
            words.insert(word_of(strength.attribute));
            CHECK_FALSE(style.expected[strength.attribute]->assumed);
        }
        CHECK(words.size() == sheet.strengths.size());
    }
}

TEST_CASE("a level that may as well be outside is no strength") {
    Profile profile = plain_profile();
    profile.level[Attribute::flavor_malt] = Estimate<double>({3.0, 3.2, 3.4, 4.2, 4.3, 4.4, 3.1, 3.3});
    const Sheet sheet = judge(plain_beer(), profile, style_that_expects(Attribute::flavor_malt, 3.0, 4.0),
                              usual_score_sheet());
    CHECK(sheet.findings.empty());
    CHECK(sheet.strengths.empty());
}

TEST_CASE("a scale on which a style leaves much open makes no strength") {
    const auto strengths = [](double low, double high) {
        return judge(plain_beer(), plain_profile(), style_that_expects(Attribute::flavor_finish, low, high),
                     fifty_points())
            .strengths;
    };
    CHECK(names(strengths(3.0, 4.0), "finish"));
    CHECK(strengths(1.0, 4.0).empty());
    CHECK(strengths(2.85, 4.0).empty());
}

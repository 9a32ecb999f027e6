#include "report/check_text.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "report/sections.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"

using namespace entrywise;
using entrywise::testing::has;

namespace {

std::string text_with(const TextStyle& style) {
    return check_text(sample_check(), sample_score_sheet(), style);
}

std::string text_of(const Check& check, std::size_t width) {
    return check_text(check, sample_score_sheet(), {width, false, false});
}

/// The text with its lines put together, so that where they break plays no part.
std::string in_one_line(const std::string& text) {
    std::string line;
    for (const std::string& each : unpainted_lines(text)) {
        const std::size_t begin = each.find_first_not_of(' ');
        line += begin == std::string::npos ? "" : ' ' + each.substr(begin);
    }
    return line;
}

std::size_t at(const std::string& text, const std::string& part) {
    const std::size_t place = text.find(part);
    CHECK_MESSAGE(place != std::string::npos, part);
    return place;
}

}  // namespace

TEST_CASE("no line of a check is longer than the page is wide") {
    for (const std::size_t width : {60U, 61U, 72U, 80U, 100U, 120U, 160U}) {
        for (const bool ascii : {false, true}) {
            for (const bool color : {false, true}) {
                CAPTURE(width);
                CHECK(widest_line(text_with({width, color, ascii})) <= width);
            }
        }
    }
}

TEST_CASE("a hostile name widens no line and steers no terminal") {
    Check check = sample_check();
    check.recipe.name = std::string(300, 'w') + "\033[2J\u202E";
    check.findings.front().note = std::string(200, 'n');
    for (const std::size_t width : {60U, 80U}) {
        const std::string text = text_of(check, width);
        CHECK(widest_line(text) <= width);
        CHECK_FALSE(has(text, "\033"));
        CHECK_FALSE(has(text, "\u202E"));
    }
}

TEST_CASE("without color no escape character, with it the same words") {
    const std::string plain = text_with({80, false, false});
    const std::string painted = text_with({80, true, false});
    CHECK_FALSE(has(plain, "\033"));
    CHECK(has(painted, "\033[1m"));
    CHECK(unpainted_lines(plain) == unpainted_lines(painted));
}

TEST_CASE("what two sections find and one change mends is told once, and apart where the change differs") {
    Check check = sample_check();
    AdvisedFinding smelled = check.findings.front();
    smelled.finding.section = Section::aroma;
    check.findings.push_back(smelled);
    const std::string once = in_one_line(text_of(check, 100));
    CHECK(has(once, "(" + std::string(title_of(check.findings.front().finding.section)) + " and aroma), "));
    check.findings.back().corrections = {"something else"};
    const std::string twice = in_one_line(text_of(check, 100));
    CHECK_FALSE(has(twice, " and aroma), "));
    CHECK(has(twice, "Something else."));
}

TEST_CASE("what the change for another finding mends stands under that, without a number of its own") {
    Check check = sample_check();
    check.findings.push_back(check.findings.front());
    check.findings.back().finding.section = Section::aroma;
    check.findings.back().finding.attribute = "hop";
    check.findings.back().mended_by = id_of(check.findings.front().finding);
    const std::string text = in_one_line(text_of(check, 100));
    CHECK(has(text, "The first mends hop (aroma) too."));
    CHECK_FALSE(has(text, "Hop (aroma)"));
    check.findings.front().corrections.pop_back();
    CHECK(has(in_one_line(text_of(check, 100)), "That mends hop (aroma) too."));
}

TEST_CASE("ASCII means ASCII, letters lose their marks alone") {
    const std::string text = text_with({80, false, true});
    CHECK(std::all_of(text.begin(), text.end(),
                      [](char byte) { return static_cast<unsigned char>(byte) < 128; }));
    CHECK(has(text, "Quay Pale Biere"));
    CHECK(has(text, "mash at 68 C"));
}

TEST_CASE("a check tells numbers, sheet, finding, cause, correction and caution") {
    const std::string text = text_with({100, false, false});
    CHECK(has(text, "1.058–1.066"));
    CHECK(has(text, "1.056–1.070"));
    CHECK(has(text, "5.5–<7.5"));
    CHECK(has(text, "to 14"));
    CHECK(has(text, "Most likely outside: bitterness (above)."));
    CHECK(has(text, "Measured, not estimated: original gravity."));
    CHECK(has(text, "Bitterness (flavor), above the style"));
    CHECK(has(text, "Bitterness lingers harshly"));
    CHECK(has(text, "Columbus, 43 g at 60 min, gives 80 % of it"));
    CHECK(has(text, "Take 8 g less Columbus; or mash at 68 °C"));
    CHECK(has(text, "water boils off at 3 L/h"));
    CHECK(has(text, "Holds gluten"));
}

// The order in which a judge fills the sheet in: it begins with the nose.
TEST_CASE("the sections stand in the order of the sheet, what to change behind them") {
    const std::string text = text_with({80, false, false});
    std::size_t before = 0;
    for (const std::string part : {"\nAroma ", "\nAppearance ", "\nFlavor ", "\nMouthfeel ",
                                   "\nOverall impression ", "\nAll ", "\nWhat to change", "\nNumbers "}) {
        const std::size_t place = at(text, part);
        CHECK_MESSAGE(place > before, part);
        before = place;
    }
}

TEST_CASE("a finding stands under its section, with what it costs in front of it") {
    const std::string text = text_with({80, false, false});
    const std::size_t finding = at(text, "\n  -1.9 Bitterness lingers harshly");
    CHECK(finding > at(text, "\nFlavor "));
    CHECK(finding < at(text, "\nMouthfeel "));
    CHECK(has(in_one_line(text), "outruns the malt. (noticed 64 %)"));
    CHECK(has(text, "1.9 of 20    0.8–3.1"));
}

TEST_CASE("a section tells what is met there, and where it only follows others") {
    const std::string text = text_with({80, false, false});
    const std::string aroma =
        text.substr(at(text, "\nAroma "), at(text, "\nAppearance ") - at(text, "\nAroma "));
    CHECK(has(aroma, "Hop medium"));
    CHECK(has(text, "Bitterness very high (above the style)"));
    const std::string overall = text.substr(at(text, "\nOverall impression "));
    CHECK(has(overall, "What is out of style above costs here too."));
    CHECK_FALSE(has(aroma, "costs here too"));
}

TEST_CASE("points lost to nothing that is found are told to be many small ones") {
    Check check = sample_check();
    check.findings.clear();
    const std::string text = in_one_line(text_of(check, 100));
    CHECK(has(text, "Several small risks, none of which a judge would likely note."));
    CHECK_FALSE(has(text, "costs here too"));
}

TEST_CASE("what is right by the style stands under its section") {
    Check check = sample_check();
    check.strengths = {{{Attribute::aroma_hop, 4.0, 3.0, 5.0}, "Hops lead the nose."}};
    const std::string text = text_of(check, 80);
    const std::size_t strength = at(text, "\n     + Hops lead the nose.");
    CHECK(strength > at(text, "\nAroma "));
    CHECK(strength < at(text, "\nAppearance "));
}

TEST_CASE("text does not fill a wide page, tables may") {
    Check check = sample_check();
    check.findings.front().note = std::string(40, 'n') + " is " + std::string(80, 'm');
    for (const std::string& line : unpainted_lines(text_of(check, 160))) {
        CHECK_FALSE((has(line, "nnn") && has(line, "mmm")));
    }
}

TEST_CASE("the score is framed, and what no recipe tells is said") {
    const std::string text = in_one_line(text_with({160, false, false}));
    CHECK(has(text, "If otherwise well made: 34–41 of 50, very good to excellent."));
    for (const std::string untold : {"infection", "packaging", "light", "age"}) {
        CHECK_MESSAGE(has(text, untold), untold);
    }
}

TEST_CASE("a chance is never printed as certain") {
    const std::string text = text_with({80, false, false});
    CHECK(has(text, ">99 %"));
    CHECK_FALSE(has(text, "100 %"));
}

TEST_CASE("the sum of it stands last") {
    const std::string text = text_with({160, false, false});
    const std::string last = text.substr(text.rfind("\n\n") + 2);
    CHECK(has(in_one_line(last), "2.5 of 50 points at risk (0.9–4.3)"));
    CHECK(has(in_one_line(last), "3 of 4 numbers most likely inside"));
    CHECK(text.back() == '\n');
}

TEST_CASE("a check without findings says so") {
    Check check = sample_check();
    check.findings.clear();
    const std::string text = text_of(check, 80);
    CHECK_FALSE(has(text, "What to change"));
    CHECK_FALSE(has(text, "noticed"));
    CHECK(has(text, "nothing that"));
}

TEST_CASE("the same check gives the same bytes") {
    CHECK(text_with({80, true, false}) == text_with({80, true, false}));
}

TEST_CASE("no line ends in blanks") {
    for (const std::size_t width : {60U, 80U}) {
        for (const std::string& line : unpainted_lines(text_with({width, false, false}))) {
            CAPTURE(line);
            CHECK((line.empty() || line.back() != ' '));
        }
    }
}

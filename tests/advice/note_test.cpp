#include "advice/note.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/has.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/judging.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Finding bitter(double level, double low, double high, Direction direction = Direction::above) {
    Finding finding;
    finding.section = Section::flavor;
    finding.attribute = "bitterness";
    finding.direction = direction;
    finding.level = level;
    finding.accepted_low = low;
    finding.accepted_high = high;
    return finding;
}

PhraseBook phrases() {
    PhraseBook book;
    book.by_attribute["flavor.bitterness"] = {.noun = "bitterness",
                                              .above = "it lingers past the malt",
                                              .below = "the finish lacks an edge",
                                              .right = "it holds the malt in check",
                                              .lower = "cut the bittering hops",
                                              .raise = "more bittering hops",
                                              .more_than_asked = "it is sharper than asked",
                                              .temper = "a little less bittering"};
    return book;
}

}  // namespace

TEST_CASE("a note names what is sensed, what the style asks and what it does to the beer") {
    Style style;
    style.name = "Harbor Ale";
    const std::string note = note_on(bitter(6.0, 2.0, 3.0), plain_beer(), style, phrases());
    CHECK(has(note, "high"));
    CHECK(has(note, "low to medium-low"));
    CHECK(has(note, "Harbor Ale"));
    CHECK(has(note, "it is sharper than asked"));
    CHECK_FALSE(has(note, "lacks an edge"));
    CHECK(note.front() == 'B');
    CHECK(note.back() == '.');
}

TEST_CASE("too little has the words for too little") {
    const std::string note =
        note_on(bitter(2.0, 4.0, 5.0, Direction::below), plain_beer(), Style(), phrases());
    CHECK(has(note, "the finish lacks an edge"));
    CHECK(has(note, "medium to medium-high"));
}

TEST_CASE("where a style asks for some of it, too much has the words for more than asked") {
    const PhraseBook book = phrases();
    CHECK(phrase_on(bitter(6.0, 2.0, 3.0), book).lower == "a little less bittering");
    CHECK(phrase_on(bitter(6.0, 0.0, 3.0), book).lower == "cut the bittering hops");
    CHECK(has(note_on(bitter(6.0, 2.0, 3.0), plain_beer(), Style(), book), "it is sharper than asked"));
    CHECK(has(note_on(bitter(6.0, 0.0, 3.0), plain_beer(), Style(), book), "it lingers past the malt"));
    const PhraseBook usual = usual_phrases();
    Finding sour = bitter(5.0, 2.0, 2.0);
    sour.attribute = "sour";
    CHECK_FALSE(has(phrase_on(sour, usual).lower, "no souring culture"));
    sour.accepted_low = sour.accepted_high = 0.0;
    CHECK(has(phrase_on(sour, usual).lower, "no souring culture"));
}

TEST_CASE("an attribute without phrases is named by its own word") {
    CHECK(has(note_on(bitter(6.0, 2.0, 3.0), plain_beer(), Style(), PhraseBook()), "Bitterness"));
}

TEST_CASE("one accepted level is one word") {
    CHECK(accepted_in_words(bitter(6.0, 3.0, 3.0)) == "medium-low");
    CHECK(accepted_in_words(bitter(6.0, 0.0, 0.0)) == "none");
}

TEST_CASE("a level outside is told by a word outside, however near") {
    CHECK(level_in_words(bitter(3.3, 2.0, 3.0)) == "medium");
    CHECK(level_in_words(bitter(1.8, 2.0, 3.0, Direction::below)) == "very low");
    CHECK(level_in_words(bitter(6.2, 2.0, 3.0)) == "high");
}

TEST_CASE("color is told in SRM") {
    Finding dark;
    dark.section = Section::appearance;
    dark.attribute = "color";
    dark.level = 22.3;
    dark.accepted_low = 6.0;
    dark.accepted_high = 14.0;
    CHECK(level_in_words(dark) == "22 SRM");
    CHECK(accepted_in_words(dark) == "6.0 to 14 SRM");
}

TEST_CASE("a number past its range is told as the number") {
    Beer beer = plain_beer();
    beer.bitterness.total = always(96.0 * ibu);
    beer.tasted_bitterness = always(96.0 * ibu);
    Style style;
    style.ranges.bitterness = Range<Bitterness>{40.0 * ibu, 70.0 * ibu};
    Finding finding = bitter(6.9, 5.0, 7.0);
    finding.told_by_number = true;
    const std::string note = note_on(finding, beer, style, phrases());
    CHECK(has(note, "96 IBU"));
    CHECK(has(note, "40"));
    CHECK(has(note, "70"));
}

TEST_CASE("a number past a range with one end open is told with the end that there is") {
    Beer beer = plain_beer();
    beer.bitterness.total = always(40.0 * ibu);
    beer.tasted_bitterness = always(40.0 * ibu);
    Style style;
    style.ranges.bitterness = Range<Bitterness>{{}, 25.0 * ibu};
    Finding finding = bitter(4.5, 0.0, 5.0);
    finding.told_by_number = true;
    CHECK(has(note_on(finding, beer, style, phrases()), "25"));
}

TEST_CASE("a note against what the base of a specialty style asks names the base, others the style itself") {
    Style base = style_that_expects(Attribute::flavor_bitterness, 2.0, 3.0);
    base.name = "Blonde Ale";
    Style specialty = base;
    specialty.name = "Harbor Spice Ale";
    const std::string on_base = note_on(bitter(6.0, 2.0, 3.0), plain_beer(), specialty, phrases(), base);
    CHECK(has(on_base, "Blonde Ale, its base, asks for low to medium-low"));
    const std::string on_own = note_on(bitter(6.0, 1.0, 3.0), plain_beer(), specialty, phrases(), base);
    CHECK(has(on_own, "Harbor Spice Ale asks for"));
    CHECK_FALSE(has(on_own, "its base"));
}

TEST_CASE("alcohol told as a number is that of the beer, wherever it shows") {
    Finding strong = bitter(3.0, 0.0, 1.0);
    strong.attribute = "alcohol";
    strong.told_by_number = true;
    Beer beer = plain_beer();
    beer.alcohol = always(6.9 * percent_by_volume);
    Style style;
    style.name = "Dark Mild";
    style.ranges.alcohol = Range<AlcoholByVolume>{3.0 * percent_by_volume, 3.8 * percent_by_volume};
    PhraseBook book = phrases();
    book.by_attribute["flavor.alcohol"].noun = "alcohol in the flavor";
    const std::string note = note_on(strong, beer, style, book);
    CHECK(note.starts_with("Alcohol comes out about 6.9 % by volume; Dark Mild runs from 3.0 to 3.8"));
}

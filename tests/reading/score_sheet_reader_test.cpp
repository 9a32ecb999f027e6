#include "reading/score_sheet_reader.hpp"

#include <doctest/doctest.h>

#include <string>

#include "reading/library.hpp"
#include "reading/phrase_reader.hpp"
#include "reading/yaml_document.hpp"

using namespace entrywise;

namespace {

Node embedded_node(const std::string& path) {
    const auto document = Library(embedded_documents()).document(path);
    REQUIRE(document);
    return *document;
}

ScoreSheet embedded_sheet() {
    const auto sheet = read_score_sheet(embedded_node("styles/sheet.yaml"), "sheet.yaml");
    REQUIRE(sheet);
    return *sheet;
}

/// The faults of a sheet whose causes are these lines.
std::vector<Fault> faults_with_causes(const std::string& causes) {
    const std::string text =
        "format: entrywise/sheet/1\n"
        "sections: {aroma: 12, appearance: 3, flavor: 20, mouthfeel: 5, overall: 10}\n"
        "cost: {one_step: 2, two_steps: 6, three_steps: 12, assumed_weight: 1, in_range_weight: 1}\n"
        "notice: {threshold: 1, spread: 0.4}\n"
        "causes:\n" +
        causes;
    const auto document = yaml_document(text, "sheet.yaml");
    REQUIRE(document);
    return read_score_sheet(*document, "sheet.yaml").faults;
}

bool tells(const std::vector<Fault>& faults, const std::string& part) {
    return std::any_of(faults.begin(), faults.end(),
                       [&](const Fault& fault) { return to_line(fault).find(part) != std::string::npos; });
}

}  // namespace

TEST_CASE("the sheet has fifty points in five sections") {
    // Beer Judge Certification Program, Beer Scoresheet: aroma 12, appearance 3, flavor 20, mouthfeel 5,
    // overall 10.
    const ScoreSheet sheet = embedded_sheet();
    CHECK(sheet.points[Section::aroma] == 12.0);
    CHECK(sheet.points[Section::appearance] == 3.0);
    CHECK(sheet.points[Section::flavor] == 20.0);
    CHECK(sheet.points[Section::mouthfeel] == 5.0);
    CHECK(sheet.points[Section::overall] == 10.0);
}

// Beer Judge Certification Program, Beer Scoresheet: the scoring guide beside the sum.
TEST_CASE("the bands of the scoring guide leave no score out") {
    const ScoreSheet sheet = embedded_sheet();
    REQUIRE(sheet.bands.size() == 6);
    CHECK(sheet.bands.front().low == 0.0);
    CHECK(sheet.bands.back().high == 50.0);
    CHECK(sheet.bands[3].name == "very good");
    CHECK(sheet.bands[3].low == 30.0);
    CHECK(sheet.bands[3].high == 37.0);
    for (std::size_t band = 1; band < sheet.bands.size(); ++band) {
        CHECK(sheet.bands[band].low == sheet.bands[band - 1].high + 1.0);
    }
    CHECK(sheet.courtesy_floor == 13.0);
    CHECK(sheet.well_made.low <= sheet.well_made.high);
}

TEST_CASE("a greater miss costs more, and what a guide only assumes weighs less") {
    const ScoreSheet sheet = embedded_sheet();
    CHECK(sheet.one_step < sheet.two_steps);
    CHECK(sheet.two_steps < sheet.three_steps);
    CHECK(sheet.assumed_weight < 1.0);
    CHECK(sheet.in_range_weight < 1.0);
}

TEST_CASE("faults of fermentation are charged for their presence, never for their absence") {
    for (const Cause& cause : embedded_sheet().causes) {
        if (cause.name == "diacetyl" || cause.name == "dimethyl sulfide" || cause.name == "sulfur") {
            CHECK_MESSAGE(cause.charged == Charged::above, cause.name);
        }
        if (cause.name == "bitterness") {
            CHECK(cause.charged == Charged::both);
        }
    }
}

TEST_CASE("shares that do not add up, attributes forgotten, doubled or misspelt are told") {
    const auto faults = faults_with_causes(
        "  - {cause: one, shown_by: [flavor.bitternes], weight: 1, shares: {flavor: 60 %, overall: 30 %}}\n"
        "  - {cause: two, shown_by: [aroma.hop, aroma.hop], weight: 1, charged: beside, shares: {aroma: 100 "
        "%}}\n");
    CHECK(tells(faults, "shares that add up to 90.0 %"));
    CHECK(tells(faults, "nearest known: flavor.bitterness"));
    CHECK(tells(faults, "aroma.hop in 2 causes"));
    CHECK(tells(faults, "mouthfeel.body in 0 causes"));
    CHECK(tells(faults, "'beside'"));
}

TEST_CASE("bands that reach into one another are told") {
    const auto document = yaml_document(
        "format: entrywise/sheet/1\nbands:\n  - {band: fair, low: 14, high: 21}\n  - {band: good, low: 21, "
        "high: 29}\n",
        "sheet.yaml");
    REQUIRE(document);
    CHECK(tells(read_score_sheet(*document, "sheet.yaml").faults, "'fair' reaching into the next band"));
}

TEST_CASE("a sheet without its parts names each of them") {
    const auto document = yaml_document("format: entrywise/sheet/1\n", "sheet.yaml");
    REQUIRE(document);
    const auto faults = read_score_sheet(*document, "sheet.yaml").faults;
    for (const std::string part :
         {"sections", "cost", "notice", "causes", "bands", "well_made", "courtesy_floor"}) {
        CHECK_MESSAGE(tells(faults, part), part);
    }
}

TEST_CASE("every attribute has its phrases") {
    const auto phrases = read_phrases(embedded_node("styles/phrases.yaml"), "phrases.yaml");
    REQUIRE(phrases);
    for (const Attribute attribute : all_attributes()) {
        const std::string name =
            std::string(word_of(section_of(attribute))) + "." + std::string(word_of(attribute));
        CAPTURE(name);
        REQUIRE(phrases->by_attribute.count(name) == 1);
        CHECK_FALSE(phrases->by_attribute.at(name).noun.empty());
        CHECK_FALSE(phrases->by_attribute.at(name).above.empty());
    }
    CHECK(phrases->by_attribute.count("appearance.color") == 1);
    CHECK(phrases->by_attribute.size() == attribute_count + 1);
}

TEST_CASE("a phrase without a noun is a fault with its place") {
    const auto document = yaml_document(
        "format: entrywise/phrases/1\nphrases:\n  - {attribute: aroma.hop, abov: much}\n", "p.yaml");
    REQUIRE(document);
    const auto faults = read_phrases(*document, "p.yaml").faults;
    CHECK(tells(faults, "p.yaml:3:5"));
    CHECK(tells(faults, "noun"));
    CHECK(tells(faults, "nearest known: above"));
}

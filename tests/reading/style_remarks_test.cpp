#include "reading/style_remarks.hpp"

#include <doctest/doctest.h>

#include "reading/style_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::string style_with(const std::string& lines) {
    return "format: entrywise/style/1\ncode: H1\nname: Harbor Amber\ncategory: H Harbor Beers\nsource: a "
           "club\n" +
           lines;
}

std::vector<std::string> remarks_on(const std::string& lines) {
    static const StyleVocabulary vocabulary =
        vocabulary_of({guide_style("21A"), guide_style("18B")}, usual_phrases());
    const Outcome<Node> document = yaml_document(style_with(lines), "H1.yaml");
    REQUIRE(document);
    const Outcome<Style> style = read_style(*document, {"club", "H1"}, "H1.yaml");
    REQUIRE(style);
    std::vector<std::string> told;
    for (const Fault& remark :
         style_remarks(*document, *style, vocabulary, usual_library().ingredients(), {"H1", "H2"})) {
        told.push_back(to_line(remark));
    }
    return told;
}

}  // namespace

TEST_CASE("a style of known words has nothing worth a look") {
    CHECK(remarks_on("notes: {hop: [citrus], malt: [toast]}\n"
                     "custom: {yeast: {typical: [american ale]}, hops: {typical: [english]},\n"
                     "         grist: {base: [pale ale malt], possible: [crystal]}, neighbors: {H2: drier}}\n"
                     "declares: {must: [strength]}\n")
              .empty());
}

TEST_CASE("words that nothing else uses are told with their place and the nearest") {
    const auto told = remarks_on(
        "custom:\n  yeast: {typical: [american alle]}\n  hops: {typical: [amercan]}\n"
        "  neighbors: {H9: drier}\nnotes: {hop: [citruss]}\n");
    REQUIRE(told.size() == 4);
    CHECK(told[0] ==
          "H1.yaml:7:21: found 'american alle', expected a known yeast class; nearest known: american ale");
    CHECK(told[1] == "H1.yaml:8:20: found 'amercan', expected a known hop family; nearest known: american");
    CHECK(told[2] ==
          "H1.yaml:9:15: found the neighbor 'H9', expected the code of another style of the guide; "
          "nearest known: H2");
    CHECK(told[3] ==
          "H1.yaml:10:15: found 'citruss', expected a known smell or taste; nearest known: citrus");
}

TEST_CASE("gravities that were exchanged, and alcohol that they cannot give, are told") {
    CHECK(remarks_on("ranges: {original_gravity: 1.010..1.014, final_gravity: 1.046..1.054}\n").size() == 1);
    // 40 points of gravity make about 5 % of alcohol: common practice.
    CHECK(
        remarks_on("ranges: {original_gravity: 1.048..1.052, final_gravity: 1.010..1.012, alcohol: 8..9 %}\n")
            .size() == 1);
    CHECK(remarks_on(
              "ranges: {original_gravity: 1.048..1.052, final_gravity: 1.010..1.012, alcohol: 4.8..5.4 %}\n")
              .empty());
}

#include "reading/remark_reader.hpp"

#include <doctest/doctest.h>

#include <string>

#include "reading/yaml_document.hpp"

using namespace entrywise;

namespace {

Outcome<RemarkBook> remarks_in(const std::string& remarks) {
    const std::string text =
        "format: entrywise/remarks/1\n"
        "lack: [no]\nnegation: [not]\nexcess: [too]\npraise: [nice]\nskipped: [a]\njoins: [and]\nbreaks: "
        "[but]\n"
        "tails: [for a]\nplaces:\n  - {says: [nose], sections: [aroma]}\n"
        "sections: {aroma: a, appearance: b, flavor: c, mouthfeel: d, overall: e}\n"
        "remarks:\n" +
        remarks;
    const Outcome<Node> document = yaml_document(text, "remarks.yaml");
    return document ? read_remarks(*document, "remarks.yaml") : Outcome<RemarkBook>(document.faults);
}

}  // namespace

TEST_CASE("a remark is read with all that it may stand for") {
    const auto book = remarks_in("  - {says: [thin, watery], means: [mouthfeel.body], direction: below}\n");
    REQUIRE(book);
    REQUIRE(book->phrases.size() == 1);
    CHECK(book->phrases[0].says.size() == 2);
    CHECK(book->phrases[0].means[0].section == Section::mouthfeel);
    CHECK(book->phrases[0].means[0].attribute == "body");
    CHECK_FALSE(book->phrases[0].above);
}

TEST_CASE("an attribute that is not judged is told with the nearest") {
    const auto book = remarks_in("  - {says: [thin], means: [mouthfeel.bodi], direction: below}\n");
    REQUIRE(book.faults.size() == 1);
    CHECK(book.faults[0].nearest == "mouthfeel.body");
}

TEST_CASE("a fault wants what to look at, a remark a direction, and a phrase stands once") {
    CHECK_FALSE(remarks_in("  - {says: [stale], fault: true}\n"));
    CHECK_FALSE(remarks_in("  - {says: [thin], means: [mouthfeel.body]}\n"));
    CHECK_FALSE(remarks_in("  - {says: [thin], means: [mouthfeel.body], direction: sideways}\n"));
    CHECK_FALSE(remarks_in("  - {says: [thin, Thin], means: [mouthfeel.body], direction: below}\n"));
    CHECK(remarks_in("  - {says: [stale], fault: true, check: the cellar}\n"));
}

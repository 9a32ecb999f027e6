#include "reading/perception_reader.hpp"

#include <doctest/doctest.h>

#include <string>

#include "reading/library.hpp"
#include "reading/yaml_document.hpp"

using namespace entrywise;

namespace {

Outcome<Perception> perception_of(const std::string& text) {
    const auto document = yaml_document(text, "perception.yaml");
    return document ? read_perception(*document, "perception.yaml") : Outcome<Perception>(document.faults);
}

}  // namespace

TEST_CASE("the palate of the program is complete, and every map has an error") {
    const Library library(embedded_documents());
    const auto perception = read_perception(*library.document("styles/perception.yaml"), "perception.yaml");
    REQUIRE(perception);
    for (const FittedMap& map : fitted_maps()) {
        for (const Attribute attribute : map.attributes) {
            CAPTURE(std::string(map.name));
            CHECK(perception->error[attribute] > 0.0);
            CHECK(perception->error[attribute] < 1.0);
        }
    }
    CHECK(perception->bitterness.by_amount > 0.0);
    CHECK(perception->body.curve.half_at > 0.0);
}

TEST_CASE("each map that a file lacks is told, and so is a constant that no map has") {
    const auto empty = perception_of("format: entrywise/perception/1\nmaps: {}\n");
    CHECK(empty.faults.size() == fitted_maps().size());
    const auto wrong = perception_of("format: entrywise/perception/1\nmaps:\n  warmth: {unnoticd: 5}\n");
    bool told = false;
    for (const Fault& fault : wrong.faults) {
        told = told || (fault.place.position.line == 3 && fault.nearest == "unnoticed");
    }
    CHECK(told);
}

TEST_CASE("a file of another kind is no perception file") {
    CHECK(perception_of("format: entrywise/sheet/1\n").faults.size() == 1);
}

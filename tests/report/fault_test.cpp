#include <doctest/doctest.h>

#include "report/fault_json.hpp"
#include "report/fault_text.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"

using namespace entrywise;
using entrywise::testing::has;

namespace {

const std::vector<Fault> faults{
    {{"a.yaml", {3, 7}}, "'crystl'", "a malt that the tables know", "crystal", "Name it as the table does."},
    {{"b.yaml", {}}, "a folder\033", "a readable file", "", ""},
};

}  // namespace

TEST_CASE("every fault has a line, place first") {
    const std::string text = fault_text(faults);
    CHECK(text.rfind("a.yaml:3:7: ", 0) == 0);
    CHECK(has(text, "\nb.yaml: "));
    CHECK_FALSE(has(text, "\033"));
    CHECK(unpainted_lines(text).size() == 3);
}

TEST_CASE("the document of faults says what is known and null for what is not") {
    const Json document = Json::parse(json_text(fault_json(faults)));
    CHECK(document["format"] == "entrywise/fault/1");
    REQUIRE(document["faults"].size() == 2);
    const Json& first = document["faults"][0];
    std::vector<std::string> keys;
    for (const auto& [key, value] : first.items()) {
        keys.push_back(key);
    }
    keys.resize(6);
    CHECK(keys == std::vector<std::string>{"file", "line", "column", "found", "expected", "nearest"});
    CHECK(first["line"] == 3);
    CHECK(first["nearest"] == "crystal");
    CHECK(document["faults"][1]["line"].is_null());
    CHECK(document["faults"][1]["nearest"].is_null());
}

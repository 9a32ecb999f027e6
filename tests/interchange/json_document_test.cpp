#include "interchange/json_document.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace entrywise;

namespace {

Node document_of(const std::string& text) {
    const auto document = json_document(text, "file");
    REQUIRE(document);
    return *document;
}

std::string fault_of(const std::string& text) {
    const auto document = json_document(text, "file");
    REQUIRE_FALSE(document);
    REQUIRE(document.faults.size() == 1);
    return to_line(document.faults.front());
}

}  // namespace

TEST_CASE("every value knows where it stands") {
    const Node root =
        document_of("{\n  \"a\" : [1, -2.50e1 ,\"x\\\"y\"],\n\t\"b\":{ \"c\": true }, \"ö\": null}");
    const Node& list = *value_of(root, "a");
    CHECK(list.position == Position{2, 9});
    CHECK(list.items[0].position == Position{2, 10});
    CHECK(list.items[1].position == Position{2, 13});
    CHECK(list.items[1].text == "-2.50e1");
    CHECK(list.items[2].position == Position{2, 22});
    CHECK(list.items[2].text == "x\"y");
    CHECK(list.items[2].quoted);
    CHECK(value_of(*value_of(root, "b"), "c")->position == Position{3, 13});
    CHECK(value_of(*value_of(root, "b"), "c")->text == "true");
    CHECK(root.entries.back().key_position == Position{3, 21});
    CHECK(value_of(root, "ö")->position == Position{3, 26});
}

TEST_CASE("what is no JSON is told with its place") {
    CHECK(fault_of("").starts_with("file:1:1: found the end of the file"));
    CHECK(fault_of("{\"a\": 1").starts_with("file:1:8: found the end of the file"));
    CHECK(fault_of("{\"a\": NaN}").starts_with("file:1:7: "));
    CHECK(fault_of("{\"a\": 1e999}").starts_with("file:1:7: "));
    CHECK(fault_of("{\"a\": 1, \"a\": 2}").starts_with("file:1:10: found the key 'a' again"));
    CHECK(fault_of("{\"a\": \"\xff\"}").starts_with("file:1:7: "));
    CHECK(fault_of("[1] [2]").starts_with("file:1:5: "));
    CHECK(fault_of("{'a': 1}").starts_with("file:1:2: "));
}

TEST_CASE("nesting and size have an end") {
    CHECK(fault_of(std::string(100000, '[')).find("nesting too deep") != std::string::npos);
    std::string many = "[0";
    for (std::size_t count = 0; count <= most_exchange_nodes; ++count) {
        many += ",0";
    }
    CHECK(fault_of(many + ']').find("more than 400000 values") != std::string::npos);
}

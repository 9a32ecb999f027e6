#include "reading/yaml_document.hpp"

#include <doctest/doctest.h>

#include <string>

#include "reading/document_file.hpp"
#include "tests/reading/only_line.hpp"

using namespace entrywise;
using entrywise::testing::only_line;

namespace {

std::string repeated(const std::string& text, std::size_t times) {
    std::string result;
    for (std::size_t count = 0; count < times; ++count) {
        result += text;
    }
    return result;
}

}  // namespace

TEST_CASE("a document keeps texts, order, quotes and places") {
    const auto document = yaml_document("b: one\na:\n  - 'two'\n  - {k: three words}\n", "f");
    REQUIRE(document);
    REQUIRE(document->kind == NodeKind::map);
    REQUIRE(document->entries.size() == 2);
    CHECK(document->entries[0].key == "b");
    CHECK(document->entries[0].value.text == "one");
    CHECK(document->entries[0].value.position == Position{1, 4});
    CHECK_FALSE(document->entries[0].value.quoted);
    CHECK(document->entries[1].key_position == Position{2, 1});
    const Node& list = document->entries[1].value;
    REQUIRE(list.items.size() == 2);
    CHECK(list.items[0].quoted);
    CHECK(list.items[0].position == Position{3, 5});
    CHECK(list.items[1].position == Position{4, 5});
    CHECK(value_of(list.items[1], "k")->text == "three words");
    CHECK(value_of(list.items[1], "k")->position == Position{4, 9});
    CHECK(value_of(list.items[1], "missing") == nullptr);
}

TEST_CASE("a column counts characters, not bytes") {
    const auto document = yaml_document("{näme: Kölsch, städt: Köln}\n", "f");
    REQUIRE(document);
    CHECK(document->entries[1].key_position == Position{1, 16});
    CHECK(document->entries[1].value.position == Position{1, 23});
}

TEST_CASE("a byte order mark at the start and line ends of Windows make no difference") {
    const auto document = yaml_document(
        "\xEF\xBB\xBF"
        "a: 1\r\nb: 2\r\n",
        "f");
    REQUIRE(document);
    CHECK(document->entries[0].key == "a");
    CHECK(document->entries[0].key_position == Position{1, 1});
    CHECK(document->entries[0].value.text == "1");
    CHECK(document->entries[1].key_position == Position{2, 1});
}

TEST_CASE("a word that YAML takes for null, truth or a number is a text when it stands in quotes") {
    const auto document = yaml_document("a: '~'\nb: 'null'\nc: ''\n", "f");
    REQUIRE(document);
    CHECK(document->entries[0].value.text == "~");
    CHECK(document->entries[1].value.text == "null");
    CHECK(document->entries[2].value.text.empty());
}

TEST_CASE("a document may begin with --- and end with ...") {
    const auto document = yaml_document("---\na: 1\n...\n", "f");
    REQUIRE(document);
    CHECK(document->entries.size() == 1);
}

TEST_CASE("limits hold") {
    CHECK(only_line(yaml_document(std::string(most_document_bytes + 1, ' '), "f").faults) ==
          "f: found 1048577 bytes, expected at most 1048576. Give a smaller file: one recipe takes a few "
          "kilobytes.");
    CHECK(only_line(yaml_document("[" + repeated("1,", most_document_nodes) + "1]", "f").faults) ==
          "f:1:400000: found more than 200000 values, expected a file of a sensible size. Split it.");
    CHECK(yaml_document(repeated("[", deepest_nesting) + repeated("]", deepest_nesting), "f"));
    CHECK_FALSE(yaml_document(repeated("[", deepest_nesting + 1) + repeated("]", deepest_nesting + 1), "f"));
    CHECK_FALSE(yaml_document(repeated("[", 500000), "f"));
    CHECK_FALSE(yaml_document(repeated("{a: ", 200000), "f"));
}

TEST_CASE("a folder, a device and a missing file are refused by what they are") {
    const std::string folder = ENTRYWISE_SOURCE_DIR "/tests";
    CHECK(only_line(read_document_file(folder).faults) ==
          folder + ": found a folder, expected a readable file. Give a file, or - for standard input.");
    CHECK(
        only_line(read_document_file("/dev/zero").faults) ==
        "/dev/zero: found no regular file, expected a readable file. Give a file, or - for standard input.");
    CHECK(only_line(read_document_file("no/such/file.yaml").faults) ==
          "no/such/file.yaml: found No such file or directory, expected a readable file. Check the path.");
}

TEST_CASE("everything refused in a sound tree is told in one run") {
    const auto document = yaml_document("a: &x 1\nb: *x\na: !t 2\nc:\n<<: {d: 1}\n", "f");
    std::vector<int> lines;
    for (const Fault& fault : document.faults) {
        lines.push_back(fault.place.position.line);
    }
    CHECK(lines == std::vector<int>{1, 2, 3, 3, 4, 5});
}

TEST_CASE("a file full of faults keeps to a hundred of them") {
    CHECK(yaml_document(repeated("a:\n", 5000), "f").faults.size() == 100);
}

#include "reading/packed_document.hpp"

#include <doctest/doctest.h>

#include <string>

#include "reading/document_file.hpp"
#include "reading/yaml_document.hpp"

using namespace entrywise;

namespace {

bool same(const Node& left, const Node& right) {
    bool equal = left.kind == right.kind && left.position == right.position && left.text == right.text &&
                 left.quoted == right.quoted && left.items.size() == right.items.size() &&
                 left.entries.size() == right.entries.size();
    for (std::size_t index = 0; equal && index < left.items.size(); ++index) {
        equal = same(left.items[index], right.items[index]);
    }
    for (std::size_t index = 0; equal && index < left.entries.size(); ++index) {
        const Entry& one = left.entries[index];
        const Entry& other = right.entries[index];
        equal =
            one.key == other.key && one.key_position == other.key_position && same(one.value, other.value);
    }
    return equal;
}

Node sample() {
    const auto document = read_document_file(ENTRYWISE_SOURCE_DIR "/recipes/slack-tide.yaml");
    REQUIRE(document);
    return *document;
}

}  // namespace

TEST_CASE("what is packed unpacks to the same document, places and all") {
    const Node document = sample();
    const auto back = unpacked(packed(document));
    REQUIRE(back);
    CHECK(same(document, *back));
}

TEST_CASE("bytes cut short or run on are no document") {
    const std::string bytes = packed(sample());
    for (std::size_t size = 0; size < bytes.size(); ++size) {
        CHECK_FALSE(unpacked(std::string_view(bytes).substr(0, size)));
    }
    CHECK_FALSE(unpacked(bytes + '\0'));
}

TEST_CASE("changed bytes give some document or none, and no harm") {
    const std::string bytes = packed(sample());
    std::size_t refused = 0;
    for (std::size_t index = 0; index < bytes.size(); ++index) {
        for (const char other : {'\0', '\x7F', '\xFF', 'l', 'm'}) {
            std::string changed = bytes;
            changed[index] = other;
            refused += unpacked(changed) ? 0U : 1U;
        }
    }
    CHECK(refused > bytes.size() / 2);
}

TEST_CASE("a nest of lists deeper than any document is no document") {
    std::string bytes;
    for (int depth = 0; depth < 100000; ++depth) {
        bytes += std::string("l\1\1\1", 4);
    }
    CHECK_FALSE(unpacked(bytes));
}

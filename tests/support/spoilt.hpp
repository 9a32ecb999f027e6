#pragma once

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

#include "base/file.hpp"
#include "reading/node.hpp"

namespace entrywise::testing {

// Recipe files with one value spoilt: what people mistype, what programs write where they know nothing, and
// what somebody writes who wants to see a program fall over.

/// The recipe file with every key that the README shows.
inline std::string recipe_of_the_readme() {
    constexpr std::size_t most = 1048576;
    const auto readme = read_file(ENTRYWISE_SOURCE_DIR "/README.md", most);
    REQUIRE(readme);
    const std::size_t begin = readme->find("format: entrywise/recipe/1\nname: Slack Tide\n");
    REQUIRE(begin != std::string::npos);
    return readme->substr(begin, readme->find("```", begin) - begin);
}

inline Node text_node(const std::string& text) {
    Node node;
    node.text = text;
    return node;
}

inline Node list_node(std::vector<Node> items) {
    Node node;
    node.kind = NodeKind::list;
    node.items = std::move(items);
    return node;
}

inline Node map_node(const std::string& key, Node value) {
    Node node;
    node.kind = NodeKind::map;
    node.entries.push_back({key, {}, std::move(value)});
    return node;
}

/// What is put in the place of a value.
inline std::vector<Node> spoilt_values() {
    std::vector<Node> values;
    for (const std::string& text : {std::string(),
                                    std::string("~"),
                                    std::string("null"),
                                    std::string("true"),
                                    std::string("NaN"),
                                    std::string(".inf"),
                                    std::string("-1"),
                                    std::string("-1 kg"),
                                    std::string("0"),
                                    std::string("0 kg"),
                                    std::string("0 %"),
                                    std::string("0 min"),
                                    std::string("0 L"),
                                    std::string("0 C"),
                                    std::string("1e400"),
                                    std::string("1e400 kg"),
                                    std::string("1e-400 kg"),
                                    std::string("1e300 kg"),
                                    std::string("1e-300 kg"),
                                    '1' + std::string(400, '0'),
                                    '1' + std::string(400, '0') + " kg",
                                    std::string("5 kg"),
                                    std::string("5 parsecs"),
                                    std::string("100 %"),
                                    std::string("24 h"),
                                    std::string("150 C"),
                                    std::string("-10 C"),
                                    std::string("1.000"),
                                    std::string("5..1 kg"),
                                    std::string("..5 kg"),
                                    std::string("5 +- kg"),
                                    std::string("5 +- 1e400 kg"),
                                    std::string(".."),
                                    std::string("/"),
                                    std::string("bjcp-2021/"),
                                    std::string("2026-02-30"),
                                    std::string("\x01\x7F"),
                                    std::string("%s%n"),
                                    std::string("\xC3\xA9\xE2\x80\xAE"),
                                    std::string(100000, 'x')}) {
        values.push_back(text_node(text));
    }
    values.push_back(list_node({}));
    values.push_back(list_node({text_node("7")}));
    values.push_back(list_node({list_node({text_node("7")})}));
    Node empty_map;
    empty_map.kind = NodeKind::map;
    values.push_back(empty_map);
    values.push_back(map_node("surely no key", text_node("7")));
    values.push_back(map_node("", list_node({})));
    return values;
}

/// The node with everything in it standing at one place.
inline Node placed(Node node, Position position) {
    node.position = position;
    for (Node& item : node.items) {
        item = placed(std::move(item), position);
    }
    for (Entry& entry : node.entries) {
        entry.key_position = position;
        entry.value = placed(std::move(entry.value), position);
    }
    return node;
}

/// Calls with the document again and again, each time with another value of it spoilt.
template <class Use>
void spoil_each(Node& document, Node& at, const std::vector<Node>& values, const Use& use) {
    const Node whole = at;
    for (const Node& value : values) {
        at = placed(value, whole.position);
        use(document);
    }
    at = whole;
    for (Node& item : at.items) {
        spoil_each(document, item, values, use);
    }
    for (Entry& entry : at.entries) {
        spoil_each(document, entry.value, values, use);
    }
}

template <class Use>
void spoil_each_value(Node document, const Use& use) {
    spoil_each(document, document, spoilt_values(), use);
}

}  // namespace entrywise::testing

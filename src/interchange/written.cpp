#include "interchange/written.hpp"

#include <algorithm>
#include <utility>

namespace entrywise {

Node node_of(const Written& written) {
    Node node;
    node.position = written.position;
    node.text = written.text;
    return node;
}

Node empty_map(Position position) {
    Node node;
    node.kind = NodeKind::map;
    node.position = position;
    return node;
}

Node empty_list(Position position) {
    Node node;
    node.kind = NodeKind::list;
    node.position = position;
    return node;
}

void put(Node& map, std::string_view key, Node value) {
    const auto found = std::find_if(map.entries.begin(), map.entries.end(),
                                    [&](const Entry& entry) { return entry.key == key; });
    if (found != map.entries.end()) {
        found->value = std::move(value);
    } else {
        const Position position = value.position;
        map.entries.push_back({std::string(key), position, std::move(value)});
    }
}

void put(Node& map, std::string_view key, const std::optional<Written>& value) {
    if (value) {
        put(map, key, node_of(*value));
    }
}

void take_out(Node& map, std::string_view key) {
    std::erase_if(map.entries, [&](const Entry& entry) { return entry.key == key; });
}

}  // namespace entrywise

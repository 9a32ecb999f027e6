#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/place.hpp"

namespace entrywise {

/// How deep lists and maps may stand in one another: a working value, far above what any honest file needs.
inline constexpr std::size_t deepest_nesting = 64;

enum class NodeKind { scalar, list, map };

struct Entry;

/// What a data file holds, whatever it was written in: a text, a list of nodes, or a map of keys to nodes.
/// Everything knows where it stands, so that whoever reads it later can say where a fault is.
struct Node {
    NodeKind kind = NodeKind::scalar;
    Position position;
    std::string text;            ///< of a scalar
    bool quoted = false;         ///< whether a scalar stood in quotes or as a block of text
    std::vector<Node> items;     ///< of a list
    std::vector<Entry> entries;  ///< of a map, in the order of the file; no key occurs twice
};

struct Entry {
    std::string key;
    Position key_position;
    Node value;
};

/// The value of a key of a map; null if the map lacks it or the node is no map.
const Node* value_of(const Node& map, std::string_view key);

}  // namespace entrywise

#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/place.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// A text as a recipe file would say it, with the place in the other file that it comes from.
struct Written {
    std::string text;
    Position position;
};

/// A node of a recipe file that says this.
Node node_of(const Written& written);

/// Empty, at the place that it comes from.
Node empty_map(Position position);
Node empty_list(Position position);

/// Sets a key of a map, in the place of what stood there; nothing is set for what is not said.
void put(Node& map, std::string_view key, Node value);
void put(Node& map, std::string_view key, const std::optional<Written>& value);

/// Takes a key from a map.
void take_out(Node& map, std::string_view key);

}  // namespace entrywise

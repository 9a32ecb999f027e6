#include "reading/node.hpp"

#include <algorithm>

namespace entrywise {

const Node* value_of(const Node& map, std::string_view key) {
    const auto found = std::find_if(map.entries.begin(), map.entries.end(),
                                    [&](const Entry& entry) { return entry.key == key; });
    return found == map.entries.end() ? nullptr : &found->value;
}

}  // namespace entrywise

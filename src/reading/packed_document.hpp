#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "reading/node.hpp"

namespace entrywise {

/// The node, with every place in it, as compact bytes: what is built into the program, so that nothing needs
/// parsing at the start.
std::string packed(const Node& document);

/// The node that the bytes stand for; nothing if they are not what `packed` writes: cut short, run on, or
/// nested deeper than any document may be.
std::optional<Node> unpacked(std::string_view bytes);

}  // namespace entrywise

#pragma once

#include <string>
#include <vector>

#include "reading/node.hpp"

namespace entrywise {

/// A recipe in a file of several, by its name; the node belongs to the document.
struct NamedRecord {
    std::string name;
    const Node* node = nullptr;
};

}  // namespace entrywise

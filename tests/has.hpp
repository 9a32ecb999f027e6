#pragma once

#include <string>

namespace entrywise::testing {

/// Whether a text has the part in it.
inline bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace entrywise::testing

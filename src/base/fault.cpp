#include "base/fault.hpp"

#include <fmt/format.h>

#include "base/text.hpp"

namespace entrywise {

std::string to_line(const Fault& fault) {
    std::string line = visible(fault.place.file);
    const Position& position = fault.place.position;
    if (position.line > 0) {
        line += fmt::format(":{}:{}", position.line, position.column);
    }
    line += fmt::format("{}found {}, expected {}", line.empty() ? "" : ": ", visible(fault.found),
                        visible(fault.expected));
    if (!fault.nearest.empty()) {
        line += fmt::format("; nearest known: {}", visible(fault.nearest));
    }
    if (!fault.remedy.empty()) {
        line += fmt::format(". {}", visible(fault.remedy));
    }
    return line;
}

}  // namespace entrywise

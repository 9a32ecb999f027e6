#pragma once

#include <string>

namespace entrywise {

/// Where in a text something stands: line and column, both counted from one; the column counts characters,
/// not bytes. Zero stands for 'not known'.
struct Position {
    int line = 0;
    int column = 0;

    friend bool operator==(const Position&, const Position&) = default;
    friend auto operator<=>(const Position&, const Position&) = default;
};

/// A position in a named file. The name is the one the user gave, so that editors turn it into a link.
struct Place {
    std::string file;
    Position position;

    friend bool operator==(const Place&, const Place&) = default;
};

}  // namespace entrywise

#pragma once

#include <string>
#include <variant>

namespace entrywise {

/// One thing that is changed in a recipe or a beer: what, from what, to what. A value is a number of the
/// unit, or a word, such as the class of a yeast, where the unit is empty.
struct Change {
    using Value = std::variant<double, std::string>;

    std::string what;
    Value from;
    Value to;
    std::string unit;

    friend bool operator==(const Change&, const Change&) = default;
};

}  // namespace entrywise

#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/place.hpp"

namespace entrywise {

/// One thing wrong with an input: where, what was found, what was expected, the nearest known word if one is
/// near, and how to mend it. A fault is a value; bad input never throws.
struct Fault {
    Place place;
    std::string found;
    std::string expected;
    std::string nearest;
    std::string remedy;

    friend bool operator==(const Fault&, const Fault&) = default;
};

/// What reading something gave: a value, or every fault that kept it from being one. A value together with
/// faults does not occur.
template <class Value>
struct Outcome {
    std::optional<Value> value;
    std::vector<Fault> faults;

    Outcome(Value read) : value(std::move(read)) {}
    Outcome(Fault fault) : faults{std::move(fault)} {}
    Outcome(std::vector<Fault> found) : faults(std::move(found)) {}

    explicit operator bool() const { return value.has_value(); }
    const Value& operator*() const { return *value; }
    const Value* operator->() const { return &*value; }
};

/// A fault as one line for a person: `file:line:column: found X, expected Y; did you mean Z? How to mend.`
std::string to_line(const Fault& fault);

}  // namespace entrywise

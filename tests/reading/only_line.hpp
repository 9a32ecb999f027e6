#pragma once

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "base/fault.hpp"

namespace entrywise::testing {

/// The one fault there is, as it is printed.
inline std::string only_line(const std::vector<Fault>& faults) {
    REQUIRE(faults.size() == 1);
    return to_line(faults.front());
}

}  // namespace entrywise::testing

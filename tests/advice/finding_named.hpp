#pragma once

#include <algorithm>
#include <string>

#include "advice/check.hpp"

namespace entrywise::testing {

/// The finding of a check with this id; null where there is none.
inline const AdvisedFinding* finding_named(const Check& checked, const std::string& id) {
    const auto found =
        std::find_if(checked.findings.begin(), checked.findings.end(),
                     [&](const AdvisedFinding& advised) { return id_of(advised.finding) == id; });
    return found == checked.findings.end() ? nullptr : &*found;
}

}  // namespace entrywise::testing

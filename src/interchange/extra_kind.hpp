#pragma once

#include <string>
#include <string_view>

namespace entrywise {

/// The word of a recipe file for an extra that a standard sorts as `spice`, `fining`, `water agent`, `herb`,
/// `flavor`, `wood` or `other`; where that leaves it open, words in its name tell.
std::string_view extra_kind(const std::string& type, const std::string& name);

}  // namespace entrywise

#pragma once

#include <string>
#include <vector>

namespace entrywise {

/// Words for smells and tastes that go by one name at the table: each list holds words that may stand for one
/// another. A word may stand in several lists; the kin of its kin are not its own.
using Kin = std::vector<std::vector<std::string>>;

/// Whether two words are the same or stand in one list.
bool are_kin(const std::string& first, const std::string& second, const Kin& kin);

}  // namespace entrywise

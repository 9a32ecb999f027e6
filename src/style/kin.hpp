#pragma once

#include <cstddef>
#include <initializer_list>
#include <string>
#include <unordered_map>
#include <vector>

namespace entrywise {

/// Words for smells and tastes that go by one name at the table: each list holds words that may stand for one
/// another. A word may stand in several lists; the kin of its kin are not its own.
class Kin {
  public:
    Kin() = default;
    Kin(std::vector<std::vector<std::string>> lists);
    Kin(std::initializer_list<std::vector<std::string>> lists);

    /// Whether two words are the same or stand in one list.
    bool are_kin(const std::string& first, const std::string& second) const;

    const std::vector<std::vector<std::string>>& lists() const { return lists_; }

  private:
    std::vector<std::vector<std::string>> lists_;
    std::unordered_map<std::string, std::vector<std::size_t>> lists_of_;  ///< in rising order
};

}  // namespace entrywise

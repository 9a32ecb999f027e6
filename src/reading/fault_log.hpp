#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.hpp"

namespace entrywise {

/// What is wrong at a place, before the file is named.
struct Flaw {
    std::string found;
    std::string expected;
    std::string nearest = {};
    std::string remedy = {};
};

/// Everything found wrong in one file so far. After a hundred faults no more are kept: nobody mends more at
/// once.
class FaultLog {
  public:
    explicit FaultLog(std::string file) : file_(std::move(file)) {}

    void add(Position position, Flaw flaw);
    bool empty() const { return faults_.empty(); }
    const std::string& file() const { return file_; }

    /// The faults in the order of the file.
    std::vector<Fault> in_order() const;

  private:
    std::string file_;
    std::vector<Fault> faults_;
};

/// Faults of one file in the order of their places.
std::vector<Fault> in_order(std::vector<Fault> faults);

/// A text from a file as a message shows it: in quotes, cut where it is long.
std::string in_quotes(std::string_view text);

}  // namespace entrywise

#pragma once

#include <chrono>
#include <cstddef>
#include <optional>

namespace entrywise {

/// Tells whoever watches a long run how far it is, in one line that is gone at the end: only on a terminal,
/// and not before a second.
class Progress {
  public:
    Progress();
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    /// One more entry is done; `share` of the input is read, where that is known.
    void step(std::optional<double> share);

  private:
    using Clock = std::chrono::steady_clock;

    bool watched_;
    Clock::time_point start_;
    Clock::time_point told_;
    std::size_t done_ = 0;
    bool shows_ = false;
};

}  // namespace entrywise

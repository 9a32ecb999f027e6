#include "cli/progress.hpp"

#include <fmt/format.h>

#include "cli/streams.hpp"

namespace entrywise {

namespace {

constexpr const char* back_and_clear = "\r\x1b[K";

double seconds_between(std::chrono::steady_clock::time_point from, std::chrono::steady_clock::time_point to) {
    return std::chrono::duration<double>(to - from).count();
}

}  // namespace

Progress::Progress() : watched_(someone_watches()), start_(Clock::now()), told_(start_) {}

Progress::~Progress() {
    if (shows_) {
        tell(back_and_clear);
    }
}

void Progress::step(std::optional<double> share) {
    constexpr double silent = 1.0;
    constexpr double between = 0.2;
    ++done_;
    if (!watched_) {
        return;
    }
    const Clock::time_point now = Clock::now();
    const double elapsed = seconds_between(start_, now);
    if (elapsed < silent || seconds_between(told_, now) < between) {
        return;
    }
    told_ = now;
    shows_ = true;
    std::string line =
        fmt::format("{} entries, {:.0f} a second", done_, static_cast<double>(done_) / elapsed);
    if (share && *share > 0.0) {
        line += fmt::format(", {:.0f} %, {:.0f} s left", 100.0 * *share, elapsed * (1.0 - *share) / *share);
    }
    tell(back_and_clear + line);
}

}  // namespace entrywise

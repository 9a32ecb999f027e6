#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "cli/exit_status.hpp"

namespace entrywise {

/// How far a run of JSON Lines into a file got: what a later run needs to go on as if nothing had been. It
/// stands beside the file until that is whole.
struct UnfinishedRun {
    std::uint64_t entries = 0;  ///< of the input, that are dealt with
    std::uint64_t input = 0;    ///< stands for those entries
    std::uint64_t bytes = 0;    ///< of the unfinished file
    ExitStatus status = ExitStatus::done;
};

/// What an earlier run of this call left; nothing where none did. One of another call, or one that cannot be
/// read, is a fault.
Outcome<std::optional<UnfinishedRun>> unfinished_run(const Call& call);

/// Writes it down, whole or not at all.
std::optional<Fault> write_down(const UnfinishedRun& run, const Call& call);

/// Takes it away.
void forget_unfinished_run(const Call& call);

}  // namespace entrywise

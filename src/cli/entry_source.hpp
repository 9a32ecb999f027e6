#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "screening/entry.hpp"

namespace entrywise {

/// An entry and where in the input it stands.
struct NumberedEntry {
    ClubEntry entry;
    std::uint64_t input_up_to_here = 0;  ///< stands for this entry and all before it
    std::optional<double> share;  ///< of the input, that is read with it; nothing where that is not known
};

/// The entries that the call names, one at a time: a folder of recipes, a table of entries, or JSON Lines on
/// standard input, which may be endless.
class EntrySource {
  public:
    virtual ~EntrySource() = default;

    /// The next entry, nothing at the end.
    virtual std::optional<NumberedEntry> next() = 0;

    /// What ended the input before its end.
    virtual std::optional<Fault> fault() const = 0;
};

Outcome<std::unique_ptr<EntrySource>> open_entries(const Call& call);

}  // namespace entrywise

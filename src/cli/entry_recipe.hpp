#pragma once

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "cli/knowledge.hpp"
#include "screening/entry.hpp"
#include "screening/screen.hpp"

namespace entrywise {

/// The recipe of an entry with what the form says in it, which goes before what the recipe says itself, and
/// the style that it is judged by: a code without a guide is one of the call's guide.
Outcome<EntryRead> entry_read(const ClubEntry& entry, const Call& call, const Knowledge& knowledge);

}  // namespace entrywise

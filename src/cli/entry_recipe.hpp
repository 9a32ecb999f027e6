#pragma once

#include <string>

#include "base/fault.hpp"
#include "cli/knowledge.hpp"
#include "screening/entry.hpp"
#include "screening/screen.hpp"

namespace entrywise {

/// The recipe of an entry with what the form says in it, which goes before what the recipe says itself, and
/// the style that it is judged by. A code on the form that names no guide is one of this guide, or of the
/// usual one where this is empty.
Outcome<EntryRead> entry_read(const ClubEntry& entry, const std::string& guide, const Knowledge& knowledge);

}  // namespace entrywise

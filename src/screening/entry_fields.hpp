#pragma once

#include <string>
#include <string_view>

#include "screening/entry.hpp"

namespace entrywise {

/// What a column of an entry table, or a key of an entry's JSON object, says of the entry.
enum class EntryField { number, brewer, category, base, declares, recipe, pick, unknown };

/// The field of that name: `entry` (also `number`, `entry number`), `brewer`, `category` (also `style`),
/// `base` (also `base style`), `declares`, `recipe` (also `file`), `pick`; case, blanks and underscores
/// aside.
EntryField entry_field(std::string_view name);

/// Sets a field that is a text. What is declared is written `strength: standard; color: pale`.
void set_field(ClubEntry& entry, EntryField field, const std::string& text, const Place& place);

}  // namespace entrywise

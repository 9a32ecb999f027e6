#pragma once

#include <set>
#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/library.hpp"
#include "reading/node.hpp"
#include "style/competition.hpp"

namespace entrywise {

/// The competition of a competition file, `entrywise/competition/1`. Styles are named by their codes, those
/// of a whole category by what their codes begin with (`21`, `03`), and looked up in the library: one that it
/// lacks, and one that is accepted twice, is a fault. A file that says nothing of what is accepted accepts
/// all of its guide.
Outcome<Competition> read_competition(const Node& document, const Library& library, const std::string& file);

/// The styles that it accepts, with their variants, each asking for all that the competition asks for in it.
Outcome<std::vector<Style>> styles_accepted(const Competition& competition, const Library& library);

/// What is worth a look in a competition that can be read: declarations that are nearly ones of these, each
/// with its place.
std::vector<Fault> competition_remarks(const Node& document, const Competition& competition,
                                       const std::set<std::string>& known);

}  // namespace entrywise

#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/library.hpp"
#include "style/competition.hpp"

namespace entrywise {

/// The competition in a file, its styles looked up in the library.
Outcome<Competition> competition_named(const std::string& file, const Library& library);

}  // namespace entrywise

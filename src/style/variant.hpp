#pragma once

#include <string>

namespace entrywise {

/// The code under which a style is entered: `25B` of the variant `25B-table-pale`. Behind the dash of a
/// variant stands a word; a code such as `03-08` is that of a style itself.
std::string entered_code(const std::string& code);

}  // namespace entrywise

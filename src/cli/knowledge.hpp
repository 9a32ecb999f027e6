#pragma once

#include <string>

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "knowledge/knowledge.hpp"
#include "reading/library.hpp"

namespace entrywise {

/// The library as the call wants it: what is built in, with the folders of the options before it.
Outcome<Library> open_library_for(const Call& call);

/// All that the commands know.
Outcome<Knowledge> knowledge_for(const Call& call);

/// The style that a text of the call names, with the fault placed in the call.
Outcome<Style> style_called(const Library& library, const std::string& name);

}  // namespace entrywise

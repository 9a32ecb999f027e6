#pragma once

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "reading/library.hpp"
#include "style/handbook.hpp"

namespace entrywise {

/// The library as the call wants it: what is built in, with the folders of the options before it.
Outcome<Library> open_library_for(const Call& call);

/// All that the commands know: the library, and the handbook from it.
struct Knowledge {
    Library library;
    Handbook handbook;
};

Outcome<Knowledge> knowledge_for(const Call& call);

/// Every style of every guide, those of the default guide first. A file that is wrong is a fault.
Outcome<std::vector<Style>> all_styles(const Library& library);

/// The styles of one guide, in the order of their codes. A guide that is not known is a fault.
Outcome<std::vector<Style>> styles_of(const Library& library, const std::string& guide);

/// The guides that a text of the call names, apart by commas, each once; `all` names every one.
std::vector<std::string> guides_in(const std::string& text, const Library& library);

/// The styles of these guides, one guide after the other.
Outcome<std::vector<Style>> styles_of(const Library& library, const std::vector<std::string>& guides);

/// The style that a text of the call names, with the fault placed in the call.
Outcome<Style> style_called(const Library& library, const std::string& name);

}  // namespace entrywise

#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/library.hpp"
#include "style/handbook.hpp"

namespace entrywise {

/// All that is known before any recipe is read: the library, and the handbook from it.
struct Knowledge {
    Library library;
    Handbook handbook;
};

Outcome<Knowledge> knowledge_in(Library library);

/// Every style of every guide, those of the default guide first. A file that is wrong is a fault.
Outcome<std::vector<Style>> all_styles(const Library& library);

/// The styles of one guide, in the order of their codes. A guide that is not known is a fault.
Outcome<std::vector<Style>> styles_of(const Library& library, const std::string& guide);

/// The guides that a text names, apart by commas, each once; `all` names every one.
std::vector<std::string> guides_in(const std::string& text, const Library& library);

/// The styles of these guides, one guide after the other.
Outcome<std::vector<Style>> styles_of(const Library& library, const std::vector<std::string>& guides);

}  // namespace entrywise

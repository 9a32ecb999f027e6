#pragma once

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "reading/library.hpp"
#include "style/perception.hpp"
#include "style/phrase.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The library as the call wants it: what is built in, with the folders of the options before it.
Outcome<Library> open_library_for(const Call& call);

/// How to judge, how to say it, and the palate that senses.
Outcome<ScoreSheet> score_sheet_of(const Library& library);
Outcome<PhraseBook> phrases_of(const Library& library);
Outcome<Perception> perception_of(const Library& library);

/// Every style of every guide, those of the default guide first. A file that is wrong is a fault.
Outcome<std::vector<Style>> all_styles(const Library& library);

/// The style that a text of the call names, with the fault placed in the call.
Outcome<Style> style_called(const Library& library, const std::string& name);

}  // namespace entrywise

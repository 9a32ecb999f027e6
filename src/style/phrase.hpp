#pragma once

#include <map>
#include <string>

namespace entrywise {

/// The words of a note on one attribute.
struct Phrase {
    std::string noun;   ///< `hop aroma`
    std::string above;  ///< what too much of it does to the beer
    std::string below;  ///< what too little of it does
    std::string lower;  ///< what in brewing lowers it, where no amount can be worked out
    std::string raise;
};

/// The phrases by `section.attribute`.
using PhraseBook = std::map<std::string, Phrase>;

}  // namespace entrywise

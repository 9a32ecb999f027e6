#include "style/phrase.hpp"

namespace entrywise {

Phrase PhraseBook::phrase_for(const std::string& section, const std::string& attribute) const {
    const auto found = by_attribute.find(section + "." + attribute);
    if (found != by_attribute.end()) {
        return found->second;
    }
    Phrase plain;
    plain.noun = attribute;
    return plain;
}

}  // namespace entrywise

#pragma once

#include <map>
#include <string>
#include <vector>

#include "style/declaration.hpp"
#include "style/kin.hpp"

namespace entrywise {

/// The words of a note on one attribute.
struct Phrase {
    std::string noun;   ///< `hop aroma`
    std::string above;  ///< what too much of it does to the beer
    std::string below;  ///< what too little of it does
    std::string right;  ///< what it does for the beer where it is as the style asks
    std::string lower;  ///< what in brewing lowers it, where no amount can be worked out
    std::string raise;

    // Instead of `above` and `lower` where the style asks for some of it; empty where these fit there too.
    std::string more_than_asked;
    std::string temper;
};

/// The words that notes are made of.
struct PhraseBook {
    std::map<std::string, Phrase> by_attribute;       ///< `section.attribute` -> its words
    Kin kin;                                          ///< descriptors that stand for one another
    std::map<std::string, std::string> hop_families;  ///< family -> its hops in words, with a cultivar
    std::vector<Declaration> declarations;

    /// The words for an attribute; its own word as the noun where there are none.
    Phrase phrase_for(const std::string& section, const std::string& attribute) const;
};

}  // namespace entrywise

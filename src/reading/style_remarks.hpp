#pragma once

#include <set>
#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/node.hpp"
#include "style/phrase.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The words that the lists of style files are written in. Such a list takes any word, and one that nothing
/// else uses does nothing.
struct StyleVocabulary {
    std::set<std::string> notes;
    std::set<std::string> grist;
    std::set<std::string> declares;
    std::set<std::string> custom_hops;
    std::set<std::string> custom_grist;
    std::set<std::string> yeasts;
};

/// The words that these styles use, and those by which the phrases know of smells, hops and declarations.
StyleVocabulary vocabulary_of(const std::vector<Style>& styles, const PhraseBook& phrases);

/// What is worth a look in a style that can be read, each with its place: words that nothing else uses,
/// neighbors that are not among the codes of its guide, and numbers that do not go together.
std::vector<Fault> style_remarks(const Node& document, const Style& style, const StyleVocabulary& vocabulary,
                                 const KnownIngredients& ingredients, const std::vector<std::string>& codes);

}  // namespace entrywise

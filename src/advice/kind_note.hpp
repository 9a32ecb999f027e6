#pragma once

#include <string>
#include <vector>

#include "judging/kind.hpp"
#include "style/phrase.hpp"
#include "style/style.hpp"

namespace entrywise {

/// `Hop character is pine and resin; German Pils asks for floral and spicy.`
std::string note_on_kind(const KindMiss& miss, const Style& style);

/// The ingredients that give it, with their shares.
std::vector<std::string> causes_of_kind(const KindMiss& miss);

/// What to take instead: hops of a family, or a yeast, that are usual for the style, or a malt of what it
/// names.
std::string correction_of_kind(const KindMiss& miss, const Style& style, const PhraseBook& phrases);

}  // namespace entrywise

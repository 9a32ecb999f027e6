#pragma once

#include <string>
#include <vector>

#include "judging/sheet.hpp"

namespace entrywise {

/// A finding as a heading: `flavor: bitterness above the style`.
std::string title_of(const Finding& finding);

/// A finding by name alone: `bitterness (flavor)`.
std::string name_of(const Finding& finding);

/// A finding within a sentence: `bitterness (flavor), above the style`.
std::string in_a_sentence(const Finding& finding);

/// The same where several sections tell it: `diacetyl (flavor and aroma), above the style`.
std::string in_a_sentence(const Finding& finding, const std::vector<Section>& sections);

}  // namespace entrywise

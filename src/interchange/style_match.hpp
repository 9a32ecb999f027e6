#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "recipe/recipe.hpp"

namespace entrywise {

/// A style of the library with what its guide calls it.
struct StyleTitle {
    StyleName name;
    std::string title;
};

/// The styles of the library, asked for only where a file names a style by its words; those of the guide that
/// is to be preferred come first.
using StyleTitles = std::function<std::vector<StyleTitle>()>;

/// Letters and digits alone, so that `BJCP 2021` and `bjcp-2021` are one guide.
std::string plain_guide(const std::string& guide);

/// The style whose title is nearest to these words: the title itself, or else the one that shares most words
/// with them, at least three in five of all. Case, accents and single letters make no difference. Looked
/// through is the guide that is named, for another edition of it first the one that is known, and then all;
/// of two that are as near, the first guide's is taken, and none where one guide has both.
std::optional<StyleTitle> style_match(const std::string& words, const std::string& guide,
                                      const std::vector<StyleTitle>& titles);

}  // namespace entrywise

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

/// The known word that the text was probably meant to be: the one with the fewest single-letter edits
/// (insertion, deletion, substitution, exchange of neighbors), case aside, when there are at most a third as
/// many edits as letters (one in words of two letters), or when the text is the beginning of just one known
/// word. Empty if none is near.
std::string nearest_word(std::string_view text, const std::vector<std::string>& known);

}  // namespace entrywise

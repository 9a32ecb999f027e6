#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// What faults in a question call the recipe of the page, which lies in no file.
inline constexpr const char* recipe_of_the_page = "the recipe";

/// A text of a question; empty where it is left out or is no text.
std::string text_in(const Node& question, std::string_view key);

/// A list of texts of a question; those that are no texts or are empty are left out.
std::vector<std::string> texts_in(const Node& question, std::string_view key);

/// The way from a node to the one at that place below it: `hops.2.alpha`, items counted from one. Empty where
/// nothing stands at that place, or the node itself does.
std::string way_to(Position position, const Node& node);

/// A part of a question that must be there.
Fault missing_in_question(std::string_view key);

}  // namespace entrywise

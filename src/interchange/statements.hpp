#pragma once

#include <string>
#include <vector>

#include "recipe/recipe.hpp"

namespace entrywise {

/// One thing that a recipe says: where its file says it (`hops.2.alpha`, items counted from one), and what;
/// `left out` where the file may say it and this one does not.
struct Statement {
    std::string path;
    std::string text;

    friend bool operator==(const Statement&, const Statement&) = default;
};

inline constexpr const char* left_out_text = "left out";

/// Everything that a recipe says, as its file would: two recipes of the same statements make the same beer.
/// Amounts are shortest texts that read back to within 1e-12.
std::vector<Statement> statements_of(const Recipe& recipe);

/// What the first says otherwise than the second. An item that the second lacks as a whole is not told.
std::vector<Statement> differences(const Recipe& recipe, const Recipe& other);

}  // namespace entrywise

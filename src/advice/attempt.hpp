#pragma once

#include <cstddef>
#include <optional>

#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// A part of another beer in a blend.
struct Blend {
    std::size_t beer = 0;  ///< which of the beers at hand
    Share share;           ///< of the other beer in the whole, by volume
};

/// A recipe on its way to being mended, and what is done to the finished beer besides.
struct Attempt {
    Recipe recipe;
    Share water;  ///< deaerated water in the finished beer, by volume
    std::optional<Blend> blend;
};

}  // namespace entrywise

#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>

#include "reading/embedded.hpp"
#include "recipe/ingredients.hpp"

namespace entrywise {

/// The ingredients that the program knows: those of outside files, which go first, and those built in. An
/// outside entry takes the place of the one built in that has its name. Of those built in only what is asked
/// for is read.
class KnownIngredients {
  public:
    KnownIngredients(std::span<const EmbeddedDocument> embedded, IngredientTables outside)
        : embedded_(embedded), outside_(std::move(outside)) {}

    /// The ingredient of that name or alias, case and outer space aside; nothing if there is none.
    std::optional<Fermentable> fermentable(const std::string& name) const;
    std::optional<Hop> hop(const std::string& name) const;
    std::optional<YeastClass> yeast(const std::string& name) const;

    /// The name or alias, as its entry writes it, that an unknown name was probably meant to be; empty if
    /// none is near.
    std::string nearest_fermentable(const std::string& name) const;
    std::string nearest_hop(const std::string& name) const;
    std::string nearest_yeast(const std::string& name) const;

  private:
    std::span<const EmbeddedDocument> embedded_;
    IngredientTables outside_;
};

}  // namespace entrywise

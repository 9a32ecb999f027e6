#pragma once

#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/fault.hpp"
#include "reading/embedded.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/node.hpp"
#include "recipe/ingredients.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What comes from outside and goes before what is built in.
struct OutsideFiles {
    std::map<std::string, std::string> file_of;  ///< path in the project's terms -> file to read
    Outcome<Node> (*read)(const std::string& file) = nullptr;  ///< needed where there is any such file
    IngredientTables ingredients;                              ///< before those built in
};

/// Everything that the program knows: styles by guide and code, ingredients by name, and the other data
/// files. Only what is asked for is unpacked, each time it is asked for; nothing is kept but styles on
/// demand, and what styles are called once one was asked for that is not known. Many threads may ask.
class Library {
  public:
    explicit Library(std::span<const EmbeddedDocument> embedded, OutsideFiles outside = {})
        : embedded_(embedded),
          outside_(std::move(outside)),
          ingredients_(embedded, std::move(outside_.ingredients)) {}

    /// The ingredients, those from outside before those built in.
    const KnownIngredients& ingredients() const { return ingredients_; }

    /// The style of that name, case aside. A guide or code that is not known is a fault with the nearest code
    /// or, where the text is rather a style's name, the code of that style; it is told without a place, as
    /// only who asks knows where the name stands.
    Outcome<Style> style(const StyleName& name) const;

    /// Keeps styles that were read here, so that asking for one of them by its exact name again only copies
    /// it.
    void keep(const std::vector<Style>& styles);

    /// The guides, and the styles of a guide in the order of their codes (`2A` before `10A`).
    std::vector<std::string> guides() const;
    std::vector<StyleName> style_names(const std::string& guide) const;

    /// Any other data file, such as `styles/sheet.yaml`.
    Outcome<Node> document(const std::string& path) const;

    /// What faults in that data file call it: the outside file, or the path itself.
    std::string file_of(const std::string& path) const;

  private:
    /// What styles are called, in lower case, by guide, case aside, in the order of `style_names`.
    struct Titles {
        std::once_flag read;
        std::map<std::string, std::vector<std::string>> of_guide;
    };

    std::vector<StyleName> style_names_of_files() const;
    std::vector<StyleName> all_style_names() const;
    const std::vector<std::string>& titles_in(const std::string& known_guide) const;
    std::optional<StyleName> known_style(const StyleName& name) const;
    Fault unknown_style(const StyleName& name) const;

    std::span<const EmbeddedDocument> embedded_;
    OutsideFiles outside_;
    KnownIngredients ingredients_;
    std::map<std::pair<std::string, std::string>, Style> kept_styles_;  ///< by guide and code
    std::shared_ptr<Titles> titles_ = std::make_shared<Titles>();       ///< copies know the same styles
};

}  // namespace entrywise

#include "reading/recipe_file.hpp"

#include "reading/document_file.hpp"
#include "reading/recipe_reader.hpp"

namespace entrywise {

Outcome<Recipe> read_recipe(const std::string& path, const KnownIngredients& known) {
    const auto document = read_document_file(path);
    if (!document) {
        return document.faults;
    }
    return read_recipe(*document, known, shown_path(path));
}

}  // namespace entrywise

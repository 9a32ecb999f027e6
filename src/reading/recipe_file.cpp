#include "reading/recipe_file.hpp"

#include "reading/document_file.hpp"
#include "reading/recipe_reader.hpp"

namespace entrywise {

Outcome<Recipe> read_recipe(const std::string& path, const IngredientTables& tables) {
    const auto document = read_document_file(path);
    if (!document) {
        return document.faults;
    }
    return read_recipe(*document, tables, shown_path(path));
}

}  // namespace entrywise

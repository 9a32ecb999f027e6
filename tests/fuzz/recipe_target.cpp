#include "interchange/recipe_writer.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

void read_recipe_file(std::string_view bytes) {
    const auto document = yaml_document(bytes, "file");
    must_be_sound(document);
    if (!document) {
        return;
    }
    const auto recipe = read_recipe(*document, built_in().ingredients(), "file");
    must_be_sound(recipe);
    if (recipe) {
        must_make_beer(*recipe);
        must(yaml_document(recipe_file_text(*document), "file").value.has_value(),
             "what is written can be read");
    }
}

}  // namespace entrywise::fuzz

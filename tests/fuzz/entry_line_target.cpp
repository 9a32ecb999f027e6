#include "interchange/exchange.hpp"
#include "reading/recipe_reader.hpp"
#include "screening/entry_line.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

void read_entry_line(std::string_view bytes) {
    InputLine line;
    line.number = 1;
    line.text = std::string(bytes);
    const ClubEntry entry = entry_of_line(line, "file");
    must(!entry.number.empty(), "an entry has a number");
    must(entry.recipe || !entry.recipe_file.empty() || !entry.faults.empty(), "an entry has a recipe");
    if (entry.recipe) {
        must_be_sound(read_recipe(*entry.recipe, built_in().ingredients(), "file"));
        must_be_sound(read_beerjson(*entry.recipe, "file", {}, built_in().ingredients()));
    }
}

}  // namespace entrywise::fuzz

#include "screening/entry_table.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

void read_entry_table(std::string_view bytes) {
    const auto entries = entrywise::read_entry_table(bytes, "file");
    must_be_sound(entries);
    if (entries) {
        for (const ClubEntry& entry : *entries) {
            must(!entry.number.empty() || !entry.faults.empty(), "an entry has a number");
            must(!entry.recipe_file.empty() || !entry.faults.empty(), "an entry has a recipe");
        }
    }
}

}  // namespace entrywise::fuzz

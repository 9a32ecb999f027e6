#pragma once

#include <string_view>

namespace entrywise::fuzz {

// The doors through which strangers' bytes come in. Each function takes any bytes at all; it ends the program
// where reading them gives neither a sound value nor a fault that says what is wrong.

void read_quantity(std::string_view bytes);
void read_recipe_file(std::string_view bytes);
void read_style_file(std::string_view bytes);
void read_competition_file(std::string_view bytes);
void read_entry_table(std::string_view bytes);
void read_entry_line(std::string_view bytes);
void read_beerjson(std::string_view bytes);
void read_beerxml(std::string_view bytes);
void read_recipe_table(std::string_view bytes);

}  // namespace entrywise::fuzz

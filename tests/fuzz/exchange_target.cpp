#include "interchange/exchange.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

namespace {

void read_as(Exchange exchange, std::string_view bytes) {
    const auto recipe = read_exchange(exchange, bytes, "file", "1", built_in().ingredients());
    must_be_sound(recipe);
    if (recipe) {
        must_make_beer(recipe->recipe);
    }
}

}  // namespace

void read_beerjson(std::string_view bytes) {
    read_as(Exchange::beerjson, bytes);
}

void read_beerxml(std::string_view bytes) {
    read_as(Exchange::beerxml, bytes);
}

void read_recipe_table(std::string_view bytes) {
    read_as(Exchange::table, bytes);
}

}  // namespace entrywise::fuzz

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/spoilt.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// Whether every fault says where it is, in a few words.
bool are_told(const std::vector<Fault>& faults) {
    constexpr std::size_t longest = 1000;
    return !faults.empty() && std::all_of(faults.begin(), faults.end(), [](const Fault& fault) {
        return fault.place.file == "file" && to_line(fault).size() < longest;
    });
}

bool are_located(const std::vector<Fault>& faults) {
    return are_told(faults) && std::all_of(faults.begin(), faults.end(),
                                           [](const Fault& fault) { return fault.place.position.line > 0; });
}

}  // namespace

TEST_CASE("the recipe file of the README is sound") {
    const auto document = yaml_document(recipe_of_the_readme(), "file");
    REQUIRE(document);
    CHECK(read_recipe(*document, usual_library().ingredients(), "file"));
}

TEST_CASE("a recipe file cut off at every byte is a recipe or told faults") {
    const std::string whole = recipe_of_the_readme();
    std::size_t recipes = 0;
    for (std::size_t size = 0; size < whole.size(); ++size) {
        CAPTURE(size);
        const auto document = yaml_document(whole.substr(0, size), "file");
        if (!document) {
            REQUIRE(are_told(document.faults));
            continue;
        }
        const auto recipe = read_recipe(*document, usual_library().ingredients(), "file");
        REQUIRE((recipe || are_located(recipe.faults)));
        recipes += recipe ? std::size_t{1} : 0;
    }
    // Some are whole as far as they go: all that is always needed stands before the last few lines.
    CHECK(recipes > 0);
    CHECK(recipes < whole.size() / 2);
}

TEST_CASE("a recipe file with any value spoilt is a recipe or located faults") {
    const auto document = yaml_document(recipe_of_the_readme(), "file");
    REQUIRE(document);
    std::size_t tried = 0;
    std::size_t refused = 0;
    spoil_each_value(*document, [&](const Node& spoilt) {
        const auto recipe = read_recipe(spoilt, usual_library().ingredients(), "file");
        for (const Fault& fault : recipe.faults) {
            INFO(to_line(fault));
            REQUIRE(are_located({fault}));
        }
        REQUIRE((recipe || are_located(recipe.faults)));
        ++tried;
        refused += recipe ? std::size_t{0} : 1;
    });
    CHECK(tried > 3500);
    // A few spoilt values are sound ones elsewhere, such as `true` for a name.
    CHECK(static_cast<double>(refused) > 0.8 * static_cast<double>(tried));
}

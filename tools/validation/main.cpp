// Puts the page on accuracy together and prints it. What is quick is worked out each time; the sections of
// real recipes and of the ranking only where their folders are given, and else taken from the page as it is.

#include <fmt/format.h>

#include <cstdio>
#include <string>

#include "base/file.hpp"
#include "knowledge/knowledge.hpp"
#include "tools/validation/page.hpp"
#include "tools/validation/published_values.hpp"
#include "tools/validation/ranking_part.hpp"
#include "tools/validation/real_beers_part.hpp"
#include "tools/validation/state.hpp"

namespace entrywise {

namespace {

/// The part as the page has it.
Part carried_over(const std::string& page, const std::string& name) {
    return part_on(page, name).value_or(never_worked_out(name));
}

MovedConstants moved_constants(const Knowledge& knowledge, const std::vector<Style>& styles,
                               const std::vector<Recipe>& demo_beers, const std::vector<Recipe>& generated) {
    return {demo_beers.size(), first_places_changed(knowledge, styles, demo_beers), generated.size(),
            first_places_changed(knowledge, styles, generated)};
}

std::vector<Quantity> all_quantities() {
    std::vector<Quantity> quantities = published_values();
    quantities.insert(quantities.begin(), whole_brews());
    return quantities;
}

/// `entries` and `real_recipes` are folders, or empty.
std::string page_from(const std::string& page, const std::string& entries, const std::string& real_recipes) {
    const Knowledge knowledge = *knowledge_in(Library(embedded_documents()));
    const std::vector<Style> styles = *styles_of(knowledge.library, "bjcp-2021");
    const std::vector<Recipe> demo_beers = recipes_in("recipes", knowledge.library);
    Accuracy accuracy{state_of(knowledge, styles, demo_beers),
                      all_quantities(),
                      bitterness_by_formula(),
                      testing::agreement_with("ba-2025"),
                      testing::agreement_of_guides(),
                      carried_over(page, real_beers_in_short),
                      carried_over(page, real_beers_section),
                      carried_over(page, ranking_section)};
    if (!real_recipes.empty()) {
        const RealBeers beers = real_beers(real_recipes, knowledge.library);
        accuracy.real_beers_in_short = in_short(beers);
        accuracy.real_beers = section_of_real_beers(beers, accuracy.state);
    }
    if (!entries.empty()) {
        accuracy.ranking = section_of_ranking(
            moved_constants(knowledge, styles, demo_beers, recipes_in(entries, knowledge.library)));
    }
    return page_of(accuracy);
}

}  // namespace

}  // namespace entrywise

int main(int count, char** arguments) {
    using namespace entrywise;
    if (count != 4) {
        fmt::print(stderr,
                   "usage: validate_accuracy PAGE ENTRIES REAL_RECIPES    a folder may be left empty: ''\n");
        return 2;
    }
    constexpr std::size_t most_bytes = 1U << 20U;
    const auto page = read_file(arguments[1], most_bytes);
    fmt::print("{}", page_from(page ? *page : "", arguments[2], arguments[3]));
    return 0;
}

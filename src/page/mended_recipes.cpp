#include "page/mended_recipes.hpp"

#include "page/question.hpp"
#include "reading/mended_text.hpp"
#include "reading/yaml_document.hpp"

namespace entrywise {

namespace {

std::optional<Node> mended(const Proposal& proposal, const Mending& mending, const std::string& text) {
    if (proposal.attempt.blend || proposal.attempt.water != Share()) {
        return std::nullopt;
    }
    const Outcome<std::string> written =
        mended_text(text, mending.recipe, proposal.attempt.recipe, recipe_of_the_page);
    return written ? yaml_document(*written, recipe_of_the_page).value : std::nullopt;
}

}  // namespace

std::vector<std::optional<Node>> mended_recipes(const Mending& mending, const std::string& text) {
    std::vector<std::optional<Node>> recipes;
    for (const Proposal& proposal : mending.proposals) {
        recipes.push_back(mended(proposal, mending, text));
    }
    return recipes;
}

}  // namespace entrywise

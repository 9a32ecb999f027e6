#include <algorithm>
#include <cmath>
#include <filesystem>
#include <optional>
#include <system_error>
#include <utility>

#include "advice/mend.hpp"
#include "base/file.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/other_recipes.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "cli/style_entered.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"
#include "reading/mended_text.hpp"
#include "reading/pantry.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "report/mend_json.hpp"
#include "report/mend_page.hpp"
#include "report/mend_text.hpp"

namespace entrywise {

namespace {

/// The customs that count are those of the style that is judged by.
Outcome<Mending> mending_of(const std::string& word, const Recipe& recipe, const Call& call,
                            const Knowledge& knowledge) {
    const Outcome<EnteredStyle> entered = style_entered(recipe, call, knowledge);
    if (!entered) {
        return entered.faults;
    }
    const bool by_base = entered->style.varies && entered->base_style;
    const Style& usual = by_base ? *entered->base_style : entered->style;
    MendingMeans means{pantry_of(usual, knowledge.library.ingredients()), {}};
    if (!call.with_folder.empty()) {
        Outcome<std::vector<Recipe>> others = other_recipes(call.with_folder, word, knowledge.library);
        if (!others) {
            return others.faults;
        }
        means.other_beers = *std::move(others.value);
    }
    MendingWish wish;
    wish.stage = call.brewed ? Stage::brewed : Stage::recipe;
    wish.target = call.target.value_or(wish.target);
    Mending mending = mend(recipe, entered->style, knowledge.handbook, means, wish, entered->base_style);
    if (call.brewed) {
        const Outcome<std::vector<Style>> styles = styles_of(knowledge.library, entered->style.guide);
        if (!styles) {
            return styles.faults;
        }
        mending.elsewhere = better_places(mending, *styles, knowledge.handbook);
    }
    return mending;
}

Fault unwritable(const Call& call, std::string found, std::string expected, std::string remedy) {
    return {.place = {call.write, {}},
            .found = std::move(found),
            .expected = std::move(expected),
            .nearest = {},
            .remedy = std::move(remedy)};
}

/// The least change that a recipe file can say: it knows of no blend and no water in the finished beer.
const Proposal* first_for_a_file(const Mending& mending) {
    const auto found =
        std::find_if(mending.proposals.begin(), mending.proposals.end(), [](const Proposal& proposal) {
            return !proposal.attempt.blend && proposal.attempt.water == Share();
        });
    return found == mending.proposals.end() ? nullptr : &*found;
}

/// Whether the text, read back, makes what the proposal says.
bool reads_back(const std::string& text, const Proposal& proposal, const Mending& mending,
                const Knowledge& knowledge) {
    const auto document = yaml_document(text, mending.recipe.file);
    const auto recipe = document
                            ? read_recipe(*document, knowledge.library.ingredients(), mending.recipe.file)
                            : Outcome<Recipe>(document.faults);
    if (!recipe) {
        return false;
    }
    constexpr double as_printed = 0.05;
    const Sheet sheet =
        verdict_on(taste(*recipe, knowledge.handbook.perception), mending.style, knowledge.handbook).sheet;
    return std::abs(sheet.total.median - proposal.sheet.total.median) < as_printed;
}

std::optional<std::vector<Fault>> write_mended(const std::string& word, const Mending& mending,
                                               const Call& call, const Knowledge& knowledge) {
    const Proposal* proposal = first_for_a_file(mending);
    if (proposal == nullptr) {
        return std::vector<Fault>{unwritable(call, "no proposal that a recipe file can say",
                                             "a mended recipe to write", "Nothing was written.")};
    }
    std::error_code failed;
    if (std::filesystem::equivalent(word, call.write, failed)) {
        return std::vector<Fault>{
            unwritable(call, "the recipe itself", "another file to write to", "Nothing was written.")};
    }
    const auto original = read_file(word, most_document_bytes);
    if (!original) {
        return original.faults;
    }
    const auto text = mended_text(*original, mending.recipe, proposal->attempt.recipe, mending.recipe.file);
    if (!text) {
        return text.faults;
    }
    if (!reads_back(*text, *proposal, mending, knowledge)) {
        return std::vector<Fault>{unwritable(call, "a layout in which the changes do not read back",
                                             "a recipe that can be edited in place",
                                             "Nothing was written; make the changes by hand.")};
    }
    if (const auto fault = write_file_whole(call.write, *text)) {
        return std::vector<Fault>{*fault};
    }
    return std::nullopt;
}

Outcome<Report> report_of(const std::string& word, const Call& call, const Knowledge& knowledge) {
    const Outcome<Recipe> recipe = recipe_named(word, knowledge.library, call.pick);
    if (!recipe) {
        return recipe.faults;
    }
    const Outcome<Mending> mending = mending_of(word, *recipe, call, knowledge);
    if (!mending) {
        return mending.faults;
    }
    const bool write = !call.write.empty() && !mending->is_in_already();
    if (write) {
        if (const auto faults = write_mended(word, *mending, call, knowledge)) {
            return *faults;
        }
    }
    Report report;
    if (call.format == Format::json) {
        report.document = mend_json(*mending, knowledge.handbook.score_sheet);
        report.document["written"] = write ? Json(call.write) : Json(nullptr);
    } else if (call.format == Format::html) {
        report.article = mend_article(*mending, knowledge.handbook.score_sheet);
    } else {
        report.text = mend_text(*mending, knowledge.handbook.score_sheet, text_style_for(call));
        if (write) {
            report.text += "The mended recipe is in " + shown(call.write, text_style_for(call)) + ".\n";
        }
    }
    return report;
}

}  // namespace

ExitStatus mend_command(const Call& call) {
    const Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return report_faults(call, knowledge.faults);
    }
    return report_on_each(call, [&](const std::string& word) { return report_of(word, call, *knowledge); });
}

}  // namespace entrywise

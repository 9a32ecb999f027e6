#include "interchange/beerjson_reader.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "interchange/addenda.hpp"
#include "interchange/beerjson_extras_reader.hpp"
#include "interchange/beerjson_grist_reader.hpp"
#include "interchange/beerjson_hops_reader.hpp"
#include "interchange/beerjson_process_reader.hpp"
#include "interchange/beerjson_timing_reader.hpp"
#include "interchange/beerjson_words.hpp"
#include "interchange/beerjson_yeast_reader.hpp"
#include "interchange/exchange_units.hpp"
#include "interchange/record.hpp"
#include "reading/values.hpp"

namespace entrywise {

namespace {

void read_notes(Record& recipe, Draft& draft, ExchangeLog& log) {
    if (const auto notes = recipe.lines("notes")) {
        draft.names_are_ours = holds_addenda(notes->text);
        draft.addenda = addenda_in(*notes);
        if (!draft.names_are_ours) {
            log.leave_out_key("notes");
        }
    }
}

/// What is brewed, by the whole; anything but beer is a fault.
void read_type(Record& recipe, Draft& draft, ExchangeLog& log) {
    const auto type = recipe.text("type");
    draft.all_extract = type && type->text == "extract";
    if (type && holds("|cider|kombucha|soda|mead|wine|", {"|" + type->text + "|"})) {
        log.faults().add(type->position, {.found = in_quotes(type->text), .expected = "a recipe for beer"});
    }
}

void read_efficiency_and_style(Record& recipe, Draft& draft, ExchangeLog& log) {
    if (const Node* const node = recipe.find("efficiency")) {
        Record efficiency(*node, "efficiency", log);
        draft.efficiency = efficiency.amount("brewhouse", exchange_share_units());
        efficiency.leave_out_others();
    }
    if (const Node* const node = recipe.find("style")) {
        Record style(*node, "style", log);
        draft.style_reference = {style.text("name"), style.text("style_guide"),
                                 style.number("category_number"), style.text("style_letter")};
    }
}

void read_ingredients(Record& recipe, const std::vector<BoilStep>& steps, Draft& draft, ExchangeLog& log) {
    const Node* const node = recipe.find("ingredients");
    if (node == nullptr) {
        return;
    }
    Record ingredients(*node, "ingredients", log);
    for (const Node* const item : ingredients.items("fermentable_additions")) {
        read_beerjson_fermentable(*item, steps, draft, log);
    }
    for (const Node* const item : ingredients.items("hop_additions")) {
        read_beerjson_hop(*item, steps, draft, log);
    }
    for (const Node* const item : ingredients.items("miscellaneous_additions")) {
        read_beerjson_extra(*item, steps, draft, log);
    }
    for (const Node* const item : ingredients.items("culture_additions")) {
        read_beerjson_culture(*item, draft, log);
    }
    ingredients.leave_out_others();
}

/// What a file states of the beer is told, as it is estimated anew.
void tell_stated(Record& recipe, const Draft& draft, ExchangeLog& log) {
    const auto tell = [&](std::string_view what, const std::optional<Written>& stated) {
        if (stated && !draft.names_are_ours) {
            log.remark(
                stated->position, RemarkKind::left_out,
                fmt::format("{} {} as stated: it is estimated anew, and `measured` in the recipe file takes "
                            "it in",
                            what, stated->text));
        }
    };
    tell("original gravity", recipe.amount("original_gravity", exchange_gravity_units()));
    tell("final gravity", recipe.amount("final_gravity", exchange_gravity_units()));
    tell("alcohol", recipe.amount("alcohol_by_volume", exchange_share_units()));
    tell("apparent attenuation", recipe.amount("apparent_attenuation", exchange_share_units()));
    tell("color", recipe.amount("color_estimate", exchange_color_units()));
}

}  // namespace

std::vector<NamedRecord> beerjson_recipes(const Node& document, ExchangeLog& log) {
    std::vector<NamedRecord> found;
    Record root(document, {}, log);
    const Node* const beerjson = root.find("beerjson");
    if (beerjson == nullptr) {
        if (document.kind == NodeKind::map) {
            log.faults().add(document.position,
                             {.found = "no key 'beerjson'", .expected = "a BeerJSON document"});
        }
        return found;
    }
    Record records(*beerjson, "beerjson", log);
    for (const Node* const recipe : records.items("recipes")) {
        const Node* const name = value_of(*recipe, "name");
        found.push_back({name == nullptr ? std::string() : name->text, recipe});
    }
    if (found.empty() && log.faults().empty()) {
        log.faults().add(beerjson->position,
                         {.found = "no recipes", .expected = "at least one under 'recipes'"});
    }
    return found;
}

Draft beerjson_draft(const Node& node, ExchangeLog& log) {
    Record recipe(node, {}, log);
    Draft draft;
    draft.position = node.position;
    draft.name = recipe.text("name");
    read_type(recipe, draft, log);
    read_notes(recipe, draft, log);
    draft.volume = recipe.amount("batch_size", exchange_volume_units());
    read_efficiency_and_style(recipe, draft, log);
    const std::vector<BoilStep> steps = read_beerjson_boil(recipe, draft, log);
    read_ingredients(recipe, steps, draft, log);
    read_beerjson_mash(recipe, draft, log);
    read_beerjson_fermentation(recipe, draft, log);
    read_beerjson_packaging(recipe, draft, log);
    tell_stated(recipe, draft, log);
    recipe.leave_out_others();
    return draft;
}

}  // namespace entrywise

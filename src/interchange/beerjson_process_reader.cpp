#include "interchange/beerjson_process_reader.hpp"

#include <fmt/format.h>

#include <optional>
#include <utility>

#include "interchange/beerjson_words.hpp"
#include "interchange/exchange_units.hpp"
#include "reading/values.hpp"

namespace entrywise {

void read_beerjson_mash(Record& recipe, Draft& draft, ExchangeLog& log) {
    const Node* const node = recipe.find("mash");
    if (node == nullptr) {
        return;
    }
    Record mash(*node, "mash", log);
    for (const Node* const item : mash.items("mash_steps")) {
        Record step(*item, "mash_steps", log);
        const auto type = step.text("type");
        DraftRest rest;
        rest.position = item->position;
        rest.temperature = step.amount("step_temperature", exchange_temperature_units());
        rest.time = step.amount("step_time", exchange_time_units());
        step.pass_over({"name", "description", "amount", "ramp_time", "end_temperature", "water_grain_ratio",
                        "infuse_temperature"});
        step.leave_out_others();
        const bool is_rest =
            !type || type->text == "infusion" || type->text == "temperature" || type->text == "decoction";
        if (is_rest) {
            draft.mash.push_back(std::move(rest));
        } else {
            log.remark(item->position, RemarkKind::left_out,
                       fmt::format("the mash step {}", in_quotes(type->text)));
        }
    }
    mash.pass_over({"name", "notes", "grain_temperature"});
    mash.leave_out_others();
}

void read_beerjson_fermentation(Record& recipe, Draft& draft, ExchangeLog& log) {
    const Node* const node = recipe.find("fermentation");
    if (node == nullptr) {
        return;
    }
    Record fermentation(*node, "fermentation", log);
    bool is_first = true;
    for (const Node* const item : fermentation.items("fermentation_steps")) {
        Record step(*item, "fermentation_steps", log);
        const auto name = step.text("name");
        const auto temperature =
            end_of_step("a fermentation step", step.amount("start_temperature", exchange_temperature_units()),
                        step.amount("end_temperature", exchange_temperature_units()), log);
        const auto time = step.amount("step_time", exchange_time_units());
        step.pass_over({"description", "vessel"});
        step.leave_out_others();
        if (is_first) {
            draft.fermentation_temperature = temperature;
            draft.fermentation_time = time;
        } else if (name && holds(name->text, {"diacetyl"}) && temperature && time) {
            draft.rest_temperature = temperature;
            draft.rest_time = time;
        } else if (!draft.conditioning_time && !draft.conditioning_temperature) {
            const bool says_so = name && holds(name->text, {"condition", "lager", "cold"});
            if (!says_so) {
                log.remark(item->position, RemarkKind::read_as,
                           fmt::format("the fermentation step {} is taken for the conditioning",
                                       name ? in_quotes(name->text) : "without a name"));
            }
            draft.conditioning_temperature = temperature;
            draft.conditioning_time = time;
        } else {
            log.remark(
                item->position, RemarkKind::left_out,
                fmt::format("the fermentation step {}", name ? in_quotes(name->text) : "without a name"));
        }
        is_first = false;
    }
    fermentation.pass_over({"name", "description", "notes"});
    fermentation.leave_out_others();
}

void read_beerjson_packaging(Record& recipe, Draft& draft, ExchangeLog& log) {
    if (const auto carbonation = recipe.number("carbonation")) {
        draft.carbonation = Written{carbonation->text + " vol", carbonation->position};
    }
    const Node* const node = recipe.find("packaging");
    if (node == nullptr) {
        return;
    }
    Record packaging(*node, "packaging", log);
    for (const Node* const item : packaging.items("packaging_vessels")) {
        Record vessel(*item, "packaging_vessels", log);
        const auto type = vessel.text("type");
        const auto carbonation = vessel.number("carbonation");
        vessel.pass_over({"name", "description", "vessel_volume", "vessel_quantity", "graphics"});
        vessel.leave_out_others();
        const bool is_known = type && holds("|keg|bottle|cask|", {"|" + type->text + "|"});
        if (is_known && !draft.package) {
            draft.package = *type;
        }
        if (carbonation && !draft.carbonation) {
            draft.carbonation = Written{carbonation->text + " vol", carbonation->position};
        }
    }
    packaging.pass_over({"name", "description", "notes", "packaged_volume"});
    packaging.leave_out_others();
}

}  // namespace entrywise

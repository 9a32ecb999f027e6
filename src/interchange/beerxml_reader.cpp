#include "interchange/beerxml_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/extra_kind.hpp"
#include "interchange/record.hpp"
#include "quantity/text.hpp"
#include "reading/values.hpp"

namespace entrywise {

namespace {

/// The element's text in lower case, for what is one of a list of words.
std::string word(Record& record, std::string_view key) {
    const auto text = record.text(key);
    return text ? lowered(text->text) : std::string();
}

/// A number in the unit that the standard fixes, in the unit that suits its size.
template <class Quantity>
std::optional<Written> quantity(Record& record, std::string_view key, std::string_view unit) {
    const auto text = record.text(key);
    if (!text) {
        return std::nullopt;
    }
    if (!number_from(text->text)) {
        record.log().faults().add(text->position, {.found = in_quotes(text->text),
                                                   .expected = fmt::format("a number for {}", key)});
        return std::nullopt;
    }
    const std::string written = fmt::format("{} {}", text->text, unit);
    const auto read = quantity_from<Quantity>(written);
    const auto* const value = std::get_if<Quantity>(&read);
    // What is no physical amount the recipe's reader tells.
    return Written{value == nullptr ? written : to_text(*value), text->position};
}

bool is_zero(const std::optional<Written>& amount) {
    const auto number = amount ? leading_number(amount->text) : std::nullopt;
    return number && number->number == 0.0;
}

/// Record sets write zero where nothing is known.
template <class Quantity>
std::optional<Written> quantity_if_some(Record& record, std::string_view key, std::string_view unit) {
    auto amount = quantity<Quantity>(record, key, unit);
    if (is_zero(amount)) {
        record.log().remark(amount->position, RemarkKind::read_as,
                            fmt::format("{} of zero is taken as not stated", key));
        return std::nullopt;
    }
    return amount;
}

std::vector<const Node*> records(Record& parent, std::string_view set, std::string_view record) {
    std::vector<const Node*> found;
    const Node* const node = parent.find(set);
    if (node != nullptr) {
        const Record is_a_set(*node, std::string(set), parent.log());
        for (const Entry& entry : node->entries) {
            if (entry.key == record) {
                found.push_back(&entry.value);
            }
        }
    }
    return found;
}

DraftKind kind_of_type(const std::string& type) {
    return type == "grain"         ? DraftKind::grain
           : type == "sugar"       ? DraftKind::sugar
           : type == "extract"     ? DraftKind::liquid_extract
           : type == "dry extract" ? DraftKind::dry_extract
                                   : DraftKind::unknown;
}

DraftFermentable read_fermentable(const Node& node, ExchangeLog& log) {
    Record record(node, "FERMENTABLE", log);
    DraftFermentable fermentable;
    fermentable.position = node.position;
    fermentable.name = record.text("NAME");
    fermentable.kind = kind_of_type(word(record, "TYPE"));
    fermentable.mass = quantity<Mass>(record, "AMOUNT", "kg");
    fermentable.extract = quantity<Share>(record, "YIELD", "%");
    fermentable.color = quantity<MaltColor>(record, "COLOR", "L");
    const auto moisture = quantity<Share>(record, "MOISTURE", "%");
    fermentable.moisture = is_zero(moisture) ? std::nullopt : moisture;
    if (word(record, "ADD_AFTER_BOIL") == "true") {
        fermentable.add = Written{"fermenter", node.position};
    }
    record.pass_over({"VERSION", "ORIGIN", "SUPPLIER", "NOTES", "COARSE_FINE_DIFF", "DIASTATIC_POWER",
                      "PROTEIN", "MAX_IN_BATCH", "RECOMMEND_MASH", "IBU_GAL_PER_LB"});
    record.leave_out_others("DISP");
    return fermentable;
}

/// The time in minutes, written in days for what stays on the beer.
std::optional<Written> time_of(Record& record) {
    return quantity<Duration>(record, "TIME", "min");
}

DraftHop read_hop(const Node& node, ExchangeLog& log) {
    Record record(node, "HOP", log);
    DraftHop hop;
    hop.position = node.position;
    hop.name = record.text("NAME");
    hop.alpha = quantity<Share>(record, "ALPHA", "%");
    hop.mass = quantity<Mass>(record, "AMOUNT", "kg");
    hop.time = time_of(record);
    hop.beta = quantity_if_some<Share>(record, "BETA", "%");
    hop.storage_loss = quantity_if_some<Share>(record, "HSI", "%");
    const std::string form = word(record, "FORM");
    if (!form.empty()) {
        hop.form = Written{form == "pellet" ? "pellet" : "whole", node.position};
    }
    const std::string use = word(record, "USE");
    std::string_view add = "boil";
    if (use == "dry hop") {
        add = "dry hop";
    } else if (use == "mash") {
        add = "mash";
    } else if (use == "first wort") {
        add = "first wort";
        hop.time = std::nullopt;
    } else if (use == "aroma") {
        add = "whirlpool";
        log.remark(node.position, RemarkKind::read_as,
                   "hops for aroma are taken to stand in the hot wort after the boil");
    } else if (use != "boil") {
        log.remark(node.position, RemarkKind::read_as,
                   fmt::format("hops of the use {} are taken to be boiled", in_quotes(use)));
    }
    hop.add = Written{std::string(add), node.position};
    record.pass_over({"VERSION", "ORIGIN", "NOTES", "TYPE", "SUBSTITUTES"});
    record.leave_out_others("DISP");
    return hop;
}

DraftExtra read_extra(const Node& node, ExchangeLog& log) {
    Record record(node, "MISC", log);
    DraftExtra extra;
    extra.position = node.position;
    extra.name = record.text("NAME");
    extra.kind = Written{std::string(extra_kind(word(record, "TYPE"), extra.name ? extra.name->text : "")),
                         node.position};
    const bool is_weight = word(record, "AMOUNT_IS_WEIGHT") == "true";
    (is_weight ? extra.mass : extra.volume) = is_weight ? quantity_if_some<Mass>(record, "AMOUNT", "kg")
                                                        : quantity_if_some<Volume>(record, "AMOUNT", "L");
    extra.time = time_of(record);
    const std::string use = word(record, "USE");
    extra.add = Written{use == "mash"                  ? "mash"
                        : use == "boil" || use.empty() ? "boil"
                                                       : "fermenter",
                        node.position};
    record.pass_over({"VERSION", "NOTES", "USE_FOR"});
    record.leave_out_others("DISP");
    return extra;
}

DraftYeast read_yeast(const Node& node, ExchangeLog& log) {
    Record record(node, "YEAST", log);
    DraftYeast yeast;
    yeast.position = node.position;
    yeast.name = record.text("NAME");
    yeast.type = word(record, "TYPE");
    yeast.attenuation = quantity_if_some<Attenuation>(record, "ATTENUATION", "%");
    record.pass_over({"VERSION", "FORM", "AMOUNT", "AMOUNT_IS_WEIGHT", "LABORATORY", "PRODUCT_ID",
                      "MIN_TEMPERATURE", "MAX_TEMPERATURE", "FLOCCULATION", "NOTES", "BEST_FOR", "MAX_REUSE",
                      "TIMES_CULTURED", "ADD_TO_SECONDARY"});
    record.leave_out_others("DISP");
    return yeast;
}

void read_mash(Record& recipe, Draft& draft, ExchangeLog& log) {
    const Node* const node = recipe.find("MASH");
    if (node == nullptr) {
        return;
    }
    Record mash(*node, "MASH", log);
    for (const Node* const item : records(mash, "MASH_STEPS", "MASH_STEP")) {
        Record step(*item, "MASH_STEP", log);
        DraftRest rest;
        rest.position = item->position;
        rest.temperature = quantity<Temperature>(step, "STEP_TEMP", "C");
        rest.time = quantity<Duration>(step, "STEP_TIME", "min");
        step.pass_over({"NAME", "VERSION", "TYPE", "INFUSE_AMOUNT", "RAMP_TIME", "END_TEMP"});
        step.leave_out_others("DISP");
        draft.mash.push_back(std::move(rest));
    }
    mash.pass_over({"NAME", "VERSION", "GRAIN_TEMP", "NOTES", "TUN_TEMP", "SPARGE_TEMP", "PH", "TUN_WEIGHT",
                    "TUN_SPECIFIC_HEAT", "EQUIP_ADJUST"});
    mash.leave_out_others("DISP");
}

/// The number at the front of `1.049 SG`.
std::optional<double> leading(Record& recipe, std::string_view key) {
    const auto text = recipe.text(key);
    const auto number = text ? leading_number(text->text) : std::nullopt;
    return number ? std::optional(number->number) : std::nullopt;
}

/// A gravity that was measured. One that is the estimate of the program that wrote the record is none; a
/// gravity of one, or of zero, is how record sets leave it out; one in points counts as thousandths.
std::optional<Written> measured_gravity(Record& recipe, std::string_view key, std::string_view estimate_key) {
    constexpr double least_in_points = 980.0;
    constexpr double most_in_points = 1250.0;
    constexpr int decimals = 3;
    const auto estimate = leading(recipe, estimate_key);
    const auto text = recipe.text(key);
    const auto number = text ? number_from(text->text) : std::nullopt;
    if (text && !number) {
        recipe.log().faults().add(text->position, {.found = in_quotes(text->text),
                                                   .expected = fmt::format("a gravity for {}", key)});
    }
    if (!number || *number == 0.0 || *number == 1.0) {
        return std::nullopt;
    }
    const bool in_points = *number >= least_in_points && *number <= most_in_points;
    const double gravity = in_points ? *number / 1000.0 : *number;
    if (estimate && rounded(*estimate, decimals) == rounded(gravity, decimals)) {
        recipe.log().remark(
            text->position, RemarkKind::left_out,
            fmt::format("{} {} is the record's own estimate, not measured: it is estimated anew", key,
                        text->text));
        return std::nullopt;
    }
    const auto is_gravity = quantity_from<SpecificGravity>(shortest(gravity));
    if (gravity > 0.0 && !std::holds_alternative<SpecificGravity>(is_gravity)) {
        recipe.log().remark(text->position, RemarkKind::left_out,
                            fmt::format("{} {}: no specific gravity", key, text->text));
        return std::nullopt;
    }
    recipe.log().remark(text->position, RemarkKind::read_as,
                        fmt::format("{} {} is taken as measured, as the standard has it", key, text->text));
    return Written{shortest(gravity), text->position};
}

void read_process(Record& recipe, Draft& draft) {
    draft.fermentation_temperature = quantity<Temperature>(recipe, "PRIMARY_TEMP", "C");
    draft.fermentation_time = quantity_if_some<Duration>(recipe, "PRIMARY_AGE", "d");
    draft.conditioning_temperature = quantity<Temperature>(recipe, "AGE_TEMP", "C");
    draft.conditioning_time = quantity_if_some<Duration>(recipe, "AGE", "d");
    draft.carbonation = quantity_if_some<Carbonation>(recipe, "CARBONATION", "vol");
    if (word(recipe, "FORCED_CARBONATION") == "true") {
        draft.package = Written{"keg", recipe.find("FORCED_CARBONATION")->position};
    }
    draft.measured_original_gravity = measured_gravity(recipe, "OG", "EST_OG");
    draft.measured_final_gravity = measured_gravity(recipe, "FG", "EST_FG");
}

}  // namespace

std::vector<NamedRecord> beerxml_recipes(const Node& document, ExchangeLog& log) {
    std::vector<NamedRecord> found;
    const Entry& root = document.entries.front();
    const auto add = [&](const Entry& entry) {
        if (entry.key == "RECIPE") {
            const Node* const name = value_of(entry.value, "NAME");
            found.push_back(
                {name == nullptr ? std::string() : std::string(trimmed(name->text)), &entry.value});
        }
    };
    add(root);
    for (const Entry& entry : root.value.entries) {
        add(entry);
    }
    if (found.empty()) {
        log.faults().add(root.value.position,
                         {.found = fmt::format("the element {} without a RECIPE", in_quotes(root.key)),
                          .expected = "a BeerXML record set with at least one RECIPE"});
    }
    return found;
}

Draft beerxml_draft(const Node& node, ExchangeLog& log) {
    Record recipe(node, {}, log);
    Draft draft;
    draft.position = node.position;
    draft.name = recipe.text("NAME");
    draft.all_extract = word(recipe, "TYPE") == "extract";
    draft.volume = quantity<Volume>(recipe, "BATCH_SIZE", "L");
    draft.boil_time = quantity<Duration>(recipe, "BOIL_TIME", "min");
    draft.efficiency = quantity_if_some<Share>(recipe, "EFFICIENCY", "%");
    if (const Node* const style = recipe.find("STYLE")) {
        Record record(*style, "STYLE", log);
        draft.style_reference = {record.text("NAME"), record.text("STYLE_GUIDE"),
                                 record.text("CATEGORY_NUMBER"), record.text("STYLE_LETTER")};
    }
    for (const Node* const item : records(recipe, "FERMENTABLES", "FERMENTABLE")) {
        draft.grist.push_back(read_fermentable(*item, log));
    }
    for (const Node* const item : records(recipe, "HOPS", "HOP")) {
        draft.hops.push_back(read_hop(*item, log));
    }
    for (const Node* const item : records(recipe, "MISCS", "MISC")) {
        draft.extras.push_back(read_extra(*item, log));
    }
    for (const Node* const item : records(recipe, "YEASTS", "YEAST")) {
        draft.yeasts.push_back(read_yeast(*item, log));
    }
    read_mash(recipe, draft, log);
    read_process(recipe, draft);
    recipe.pass_over({"VERSION", "BREWER", "ASST_BREWER", "DATE", "WATERS"});
    recipe.leave_out_others("DISP");
    return draft;
}

}  // namespace entrywise

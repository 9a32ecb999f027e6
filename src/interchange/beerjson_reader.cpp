#include "interchange/beerjson_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/addenda.hpp"
#include "interchange/extra_kind.hpp"
#include "interchange/potential.hpp"
#include "interchange/record.hpp"
#include "reading/values.hpp"

namespace entrywise {

namespace {

bool holds(const std::string& text, std::initializer_list<std::string_view> words) {
    const std::string low = lowered(text);
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return low.find(word) != std::string::npos; });
}

/// What happens in a step of the boil.
enum class StepKind { before_boil, boil, after_boil };

struct BoilStep {
    StepKind kind = StepKind::boil;
    std::optional<Written> start;
    std::optional<Written> end;
};

/// Reads one recipe object.
class BeerJsonRecipe {
  public:
    BeerJsonRecipe(const Node& node, ExchangeLog& log) : recipe_(node, {}, log), log_(log) {
        draft_.position = node.position;
    }

    Draft draft();

  private:
    void read_notes();
    void read_boil();
    void read_ingredients();
    void read_fermentable(const Node& node);
    std::optional<Written> read_yield(Record& fermentable);
    void read_hop(const Node& node);
    void read_extra(const Node& node);
    void read_culture(const Node& node);
    void read_mash();
    void read_fermentation();
    void read_packaging();
    void tell_stated();

    struct Timing {
        std::string use;
        std::optional<Written> time;
        std::optional<BoilStep> step;
        Position position;
    };
    Timing read_timing(Record& addition);

    /// The mass of an addition; what is measured otherwise is left out, and that is told.
    std::optional<Written> mass_of(Record& addition, const std::string& name);
    std::optional<Written> temperature_between(std::string_view what, const std::optional<Written>& start,
                                               const std::optional<Written>& end);

    Record recipe_;
    ExchangeLog& log_;
    Draft draft_;
    std::vector<BoilStep> steps_;
};

std::string name_of(const std::optional<Written>& name) {
    return name ? entrywise::quoted(name->text) : std::string("an ingredient without a name");
}

/// A step's temperature: where it ends, since what it starts from is the step before.
std::optional<Written> BeerJsonRecipe::temperature_between(std::string_view what,
                                                           const std::optional<Written>& start,
                                                           const std::optional<Written>& end) {
    if (start && end && start->text != end->text) {
        log_.remark(end->position, RemarkKind::read_as,
                    fmt::format("{} from {} to {}: {} taken", what, start->text, end->text, end->text));
    }
    return end ? end : start;
}

void BeerJsonRecipe::read_notes() {
    if (const auto notes = recipe_.lines("notes")) {
        draft_.names_are_ours = holds_addenda(notes->text);
        draft_.addenda = addenda_in(*notes);
        if (!draft_.names_are_ours) {
            log_.leave_out_key("notes");
        }
    }
}

void BeerJsonRecipe::read_boil() {
    const Node* const node = recipe_.find("boil");
    if (node == nullptr) {
        return;
    }
    Record boil(*node, "boil", log_);
    draft_.boil_time = boil.amount("boil_time", exchange_time_units());
    bool boiled = false;
    for (const Node* const item : boil.items("boil_steps")) {
        Record step(*item, "boil_steps", log_);
        const auto name = step.text("name");
        const bool is_boil = !boiled && name && holds(name->text, {"boil"}) && !holds(name->text, {"pre"});
        BoilStep known;
        known.kind = is_boil ? StepKind::boil : boiled ? StepKind::after_boil : StepKind::before_boil;
        known.start = step.amount("start_temperature", exchange_temperature_units());
        known.end = step.amount("end_temperature", exchange_temperature_units());
        boiled = boiled || is_boil;
        steps_.push_back(known);
    }
    // Steps that never boil tell nothing of what comes before and after.
    if (!boiled) {
        steps_.clear();
    }
    boil.pass_over({"name", "description", "notes"});
    boil.leave_out_others();
}

BeerJsonRecipe::Timing BeerJsonRecipe::read_timing(Record& addition) {
    Timing timing;
    timing.position = addition.position();
    const Node* const node = addition.find("timing");
    if (node == nullptr) {
        return timing;
    }
    Record record(*node, addition.path() + ".timing", log_);
    timing.position = node->position;
    if (const auto use = record.text("use")) {
        timing.use = use->text;
    }
    const auto time = record.amount("time", exchange_time_units());
    const auto duration = record.amount("duration", exchange_time_units());
    timing.time = duration ? duration : time;
    if (time && !duration) {
        log_.remark(time->position, RemarkKind::read_as,
                    "a time without a duration is taken for how long an addition stays");
    }
    const auto step = record.number("step");
    const auto count = step ? number_from(step->text) : std::nullopt;
    if (count && timing.use == "add_to_boil" && *count >= 1.0 &&
        *count <= static_cast<double>(steps_.size())) {
        timing.step = steps_[static_cast<std::size_t>(*count) - 1];
    }
    record.leave_out_others();
    return timing;
}

std::optional<Written> BeerJsonRecipe::mass_of(Record& addition, const std::string& name) {
    const std::string unit = addition.unit_of("amount");
    const auto is_unit = [&](const ExchangeUnit& known) { return known.unit == unit; };
    const auto volumes = exchange_volume_units();
    if (std::any_of(volumes.begin(), volumes.end(), is_unit)) {
        const auto amount = addition.amount("amount", volumes);
        log_.remark(
            addition.find("amount")->position, RemarkKind::left_out,
            fmt::format("{}: {} is a volume, and a recipe weighs it", name, amount ? amount->text : unit));
        return std::nullopt;
    }
    return addition.amount("amount", exchange_mass_units());
}

std::optional<Written> BeerJsonRecipe::read_yield(Record& fermentable) {
    const Node* const node = fermentable.find("yield");
    if (node == nullptr) {
        return std::nullopt;
    }
    Record yield(*node, "fermentable_additions.yield", log_);
    const auto fine = yield.amount("fine_grind", exchange_share_units());
    const auto potential = yield.amount("potential", exchange_gravity_units());
    const auto coarse = yield.amount("coarse_grind", exchange_share_units());
    yield.leave_out_others();
    if (fine) {
        return fine;
    }
    if (potential) {
        const auto extract = extract_of_potential(potential->text);
        if (!extract) {
            log_.faults().add(potential->position, {.found = entrywise::quoted(potential->text),
                                                    .expected = "a potential gravity such as 1.037"});
            return std::nullopt;
        }
        if (is_in_points(potential->text)) {
            log_.remark(potential->position, RemarkKind::read_as,
                        fmt::format("a potential of {} is taken for {}", potential->text,
                                    shortest(*number_from(potential->text) / 1000.0)));
        }
        return Written{*extract, potential->position};
    }
    if (coarse) {
        log_.remark(coarse->position, RemarkKind::read_as,
                    "the coarse grind's yield is taken for the fine grind's");
    }
    return coarse;
}

DraftKind kind_of_type(const std::string& type, const std::string& name) {
    if (type == "grain") {
        return DraftKind::grain;
    }
    if (type == "extract") {
        return DraftKind::liquid_extract;
    }
    if (type == "dry extract") {
        return DraftKind::dry_extract;
    }
    if (type == "fruit" || type == "juice") {
        return DraftKind::fruit;
    }
    if (type == "sugar" || type == "honey" || holds(name, {"sugar", "syrup", "honey"})) {
        return DraftKind::sugar;
    }
    return DraftKind::unknown;
}

DraftGroup group_of(const std::optional<Written>& group) {
    if (!group) {
        return DraftGroup::unknown;
    }
    return group->text == "base"      ? DraftGroup::base
           : group->text == "caramel" ? DraftGroup::caramel
           : group->text == "roasted" ? DraftGroup::roasted
                                      : DraftGroup::unknown;
}

void BeerJsonRecipe::read_fermentable(const Node& node) {
    Record record(node, "fermentable_additions", log_);
    DraftFermentable fermentable;
    fermentable.position = node.position;
    fermentable.name = record.text("name");
    const auto type = record.text("type");
    fermentable.kind = kind_of_type(type ? type->text : "", fermentable.name ? fermentable.name->text : "");
    fermentable.group = group_of(record.text("grain_group"));
    fermentable.extract = read_yield(record);
    fermentable.color = record.amount("color", exchange_color_units());
    const Timing timing = read_timing(record);
    const bool has_amount = record.find("amount") != nullptr;
    fermentable.mass = mass_of(record, name_of(fermentable.name));
    record.pass_over({"origin", "producer", "product_id", "notes", "inventory"});
    record.leave_out_others();
    if (timing.use == "add_to_package") {
        log_.remark(
            timing.position, RemarkKind::left_out,
            name_of(fermentable.name) + " goes into the package: it carbonates and is no part of the grist");
        return;
    }
    if (timing.use == "add_to_boil" || timing.use == "add_to_fermentation") {
        fermentable.add = Written{timing.use == "add_to_boil" ? "boil" : "fermenter", timing.position};
    }
    // What has a unit that is not known was told; an amount that is missing the recipe's reader tells.
    if (fermentable.mass || !has_amount) {
        draft_.grist.push_back(std::move(fermentable));
    }
}

std::optional<Written> form_of(const std::optional<Written>& form, ExchangeLog& log) {
    if (!form) {
        return std::nullopt;
    }
    if (form->text == "leaf (wet)") {
        log.remark(form->position, RemarkKind::read_as, "wet hops are taken for dried ones of the same mass");
    }
    const bool is_whole = form->text.starts_with("leaf") || form->text == "plug";
    const bool is_extract = form->text == "extract";
    return Written{is_extract ? "extract" : is_whole ? "whole" : "pellet", form->position};
}

/// Acids of zero are how files leave them out.
std::optional<Written> if_some(const std::optional<Written>& share, const std::string& name,
                               std::string_view what, ExchangeLog& log) {
    const bool is_zero = share && leading_number(share->text) && leading_number(share->text)->number == 0.0;
    if (is_zero) {
        log.remark(share->position, RemarkKind::read_as,
                   fmt::format("{}: {} of zero are taken as not stated", name, what));
        return std::nullopt;
    }
    return share;
}

/// The use that a key beyond the standard names, where it contradicts the standard's.
std::string use_beside_the_standard(Record& record, ExchangeLog& log) {
    const auto use = record.text("use");
    if (use && lowered(use->text) == "dry hop") {
        log.remark(use->position, RemarkKind::read_as,
                   "the key 'use', which is not the standard's, says dry hop: taken");
        return "add_to_fermentation";
    }
    return {};
}

void BeerJsonRecipe::read_hop(const Node& node) {
    Record record(node, "hop_additions", log_);
    DraftHop hop;
    hop.position = node.position;
    hop.name = record.text("name");
    hop.alpha = record.amount("alpha_acid", exchange_share_units());
    hop.beta =
        if_some(record.amount("beta_acid", exchange_share_units()), name_of(hop.name), "beta acids", log_);
    hop.form = form_of(record.text("form"), log_);
    const bool has_amount = record.find("amount") != nullptr;
    hop.mass = mass_of(record, name_of(hop.name));
    Timing timing = read_timing(record);
    if (const std::string use = use_beside_the_standard(record, log_); !use.empty()) {
        timing.use = use;
    }
    record.pass_over({"origin", "producer", "product_id", "year", "notes", "inventory"});
    record.leave_out_others();
    std::string_view add = "boil";
    if (timing.use == "add_to_mash") {
        add = "mash";
    } else if (timing.use == "add_to_fermentation" || timing.use == "add_to_package") {
        add = "dry hop";
    } else if (timing.step && timing.step->kind == StepKind::after_boil) {
        add = "whirlpool";
        hop.temperature = temperature_between("a stand of hops", timing.step->start, timing.step->end);
    } else if (timing.step && timing.step->kind == StepKind::before_boil) {
        add = "first wort";
    }
    if (timing.use.empty()) {
        log_.remark(timing.position, RemarkKind::read_as,
                    name_of(hop.name) + " without a use is taken to be boiled");
    }
    hop.add = Written{std::string(add), timing.position};
    // Hops that go in before the boil stay for all of it, whatever the time says of their step.
    hop.time = add == "first wort" ? std::nullopt : timing.time;
    if (hop.mass || !has_amount) {
        draft_.hops.push_back(std::move(hop));
    }
}

void BeerJsonRecipe::read_extra(const Node& node) {
    Record record(node, "miscellaneous_additions", log_);
    DraftExtra extra;
    extra.position = node.position;
    extra.name = record.text("name");
    const auto type = record.text("type");
    extra.kind = Written{std::string(extra_kind(type ? type->text : "", extra.name ? extra.name->text : "")),
                         type ? type->position : node.position};
    const Node* const amount = record.find("amount");
    const std::string unit = record.unit_of("amount");
    const auto is_volume = [&](const ExchangeUnit& known) { return known.unit == unit; };
    const auto volumes = exchange_volume_units();
    const bool is_count = holds("|1|unit|each|dimensionless|pkg|", {"|" + unit + "|"});
    if (amount != nullptr && is_count) {
        log_.remark(amount->position, RemarkKind::left_out,
                    fmt::format("{}: a count says no mass", name_of(extra.name)));
    } else if (std::any_of(volumes.begin(), volumes.end(), is_volume)) {
        extra.volume = record.amount("amount", volumes);
    } else {
        extra.mass = record.amount("amount", exchange_mass_units());
    }
    const Timing timing = read_timing(record);
    extra.time = timing.time;
    const bool hot = timing.use.empty() || timing.use == "add_to_boil";
    const bool after = hot && timing.step && timing.step->kind == StepKind::after_boil;
    extra.add = Written{timing.use == "add_to_mash" ? "mash"
                        : after                     ? "whirlpool"
                        : hot                       ? "boil"
                                                    : "fermenter",
                        timing.position};
    record.pass_over({"producer", "product_id", "notes", "use_for", "inventory"});
    record.leave_out_others();
    draft_.extras.push_back(std::move(extra));
}

void BeerJsonRecipe::read_culture(const Node& node) {
    Record record(node, "culture_additions", log_);
    DraftYeast yeast;
    yeast.position = node.position;
    yeast.name = record.text("name");
    const auto type = record.text("type");
    yeast.type = type ? type->text : std::string();
    yeast.attenuation = record.amount("attenuation", exchange_share_units());
    record.pass_over({"form", "producer", "product_id", "amount", "notes", "inventory", "times_cultured"});
    record.leave_out_others();
    draft_.yeasts.push_back(std::move(yeast));
}

void BeerJsonRecipe::read_ingredients() {
    const Node* const node = recipe_.find("ingredients");
    if (node == nullptr) {
        return;
    }
    Record ingredients(*node, "ingredients", log_);
    for (const Node* const item : ingredients.items("fermentable_additions")) {
        read_fermentable(*item);
    }
    for (const Node* const item : ingredients.items("hop_additions")) {
        read_hop(*item);
    }
    for (const Node* const item : ingredients.items("miscellaneous_additions")) {
        read_extra(*item);
    }
    for (const Node* const item : ingredients.items("culture_additions")) {
        read_culture(*item);
    }
    ingredients.leave_out_others();
}

void BeerJsonRecipe::read_mash() {
    const Node* const node = recipe_.find("mash");
    if (node == nullptr) {
        return;
    }
    Record mash(*node, "mash", log_);
    for (const Node* const item : mash.items("mash_steps")) {
        Record step(*item, "mash_steps", log_);
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
            draft_.mash.push_back(std::move(rest));
        } else {
            log_.remark(item->position, RemarkKind::left_out,
                        fmt::format("the mash step {}", entrywise::quoted(type->text)));
        }
    }
    mash.pass_over({"name", "notes", "grain_temperature"});
    mash.leave_out_others();
}

void BeerJsonRecipe::read_fermentation() {
    const Node* const node = recipe_.find("fermentation");
    if (node == nullptr) {
        return;
    }
    Record fermentation(*node, "fermentation", log_);
    bool is_first = true;
    for (const Node* const item : fermentation.items("fermentation_steps")) {
        Record step(*item, "fermentation_steps", log_);
        const auto name = step.text("name");
        const auto temperature = temperature_between(
            "a fermentation step", step.amount("start_temperature", exchange_temperature_units()),
            step.amount("end_temperature", exchange_temperature_units()));
        const auto time = step.amount("step_time", exchange_time_units());
        step.pass_over({"description", "vessel"});
        step.leave_out_others();
        if (is_first) {
            draft_.fermentation_temperature = temperature;
            draft_.fermentation_time = time;
        } else if (name && holds(name->text, {"diacetyl"}) && temperature && time) {
            draft_.rest_temperature = temperature;
            draft_.rest_time = time;
        } else if (!draft_.conditioning_time && !draft_.conditioning_temperature) {
            const bool says_so = name && holds(name->text, {"condition", "lager", "cold"});
            if (!says_so) {
                log_.remark(item->position, RemarkKind::read_as,
                            fmt::format("the fermentation step {} is taken for the conditioning",
                                        name ? entrywise::quoted(name->text) : "without a name"));
            }
            draft_.conditioning_temperature = temperature;
            draft_.conditioning_time = time;
        } else {
            log_.remark(item->position, RemarkKind::left_out,
                        fmt::format("the fermentation step {}",
                                    name ? entrywise::quoted(name->text) : "without a name"));
        }
        is_first = false;
    }
    fermentation.pass_over({"name", "description", "notes"});
    fermentation.leave_out_others();
}

void BeerJsonRecipe::read_packaging() {
    if (const auto carbonation = recipe_.number("carbonation")) {
        draft_.carbonation = Written{carbonation->text + " vol", carbonation->position};
    }
    const Node* const node = recipe_.find("packaging");
    if (node == nullptr) {
        return;
    }
    Record packaging(*node, "packaging", log_);
    for (const Node* const item : packaging.items("packaging_vessels")) {
        Record vessel(*item, "packaging_vessels", log_);
        const auto type = vessel.text("type");
        const auto carbonation = vessel.number("carbonation");
        vessel.pass_over({"name", "description", "vessel_volume", "vessel_quantity", "graphics"});
        vessel.leave_out_others();
        const bool is_known = type && holds("|keg|bottle|cask|", {"|" + type->text + "|"});
        if (is_known && !draft_.package) {
            draft_.package = *type;
        }
        if (carbonation && !draft_.carbonation) {
            draft_.carbonation = Written{carbonation->text + " vol", carbonation->position};
        }
    }
    packaging.pass_over({"name", "description", "notes", "packaged_volume"});
    packaging.leave_out_others();
}

void BeerJsonRecipe::tell_stated() {
    const auto tell = [&](std::string_view what, const std::optional<Written>& stated) {
        if (stated && !draft_.names_are_ours) {
            log_.remark(
                stated->position, RemarkKind::left_out,
                fmt::format("{} {} as stated: it is estimated anew, and `measured` in the recipe file takes "
                            "it in",
                            what, stated->text));
        }
    };
    tell("original gravity", recipe_.amount("original_gravity", exchange_gravity_units()));
    tell("final gravity", recipe_.amount("final_gravity", exchange_gravity_units()));
    tell("alcohol", recipe_.amount("alcohol_by_volume", exchange_share_units()));
    tell("apparent attenuation", recipe_.amount("apparent_attenuation", exchange_share_units()));
    tell("color", recipe_.amount("color_estimate", exchange_color_units()));
}

Draft BeerJsonRecipe::draft() {
    draft_.name = recipe_.text("name");
    const auto type = recipe_.text("type");
    draft_.all_extract = type && type->text == "extract";
    if (type && holds("|cider|kombucha|soda|mead|wine|", {"|" + type->text + "|"})) {
        log_.faults().add(type->position,
                          {.found = entrywise::quoted(type->text), .expected = "a recipe for beer"});
    }
    read_notes();
    draft_.volume = recipe_.amount("batch_size", exchange_volume_units());
    if (const Node* const node = recipe_.find("efficiency")) {
        Record efficiency(*node, "efficiency", log_);
        draft_.efficiency = efficiency.amount("brewhouse", exchange_share_units());
        efficiency.leave_out_others();
    }
    if (const Node* const node = recipe_.find("style")) {
        Record style(*node, "style", log_);
        draft_.style_reference = {style.text("name"), style.text("style_guide"),
                                  style.number("category_number"), style.text("style_letter")};
    }
    read_boil();
    read_ingredients();
    read_mash();
    read_fermentation();
    read_packaging();
    tell_stated();
    recipe_.leave_out_others();
    return std::move(draft_);
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

Draft beerjson_draft(const Node& recipe, ExchangeLog& log) {
    return BeerJsonRecipe(recipe, log).draft();
}

}  // namespace entrywise

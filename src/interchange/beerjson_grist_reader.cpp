#include "interchange/beerjson_grist_reader.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/beerjson_words.hpp"
#include "interchange/exchange_units.hpp"
#include "interchange/potential.hpp"
#include "reading/values.hpp"

namespace entrywise {

namespace {

std::optional<Written> read_yield(Record& fermentable, ExchangeLog& log) {
    const Node* const node = fermentable.find("yield");
    if (node == nullptr) {
        return std::nullopt;
    }
    Record yield(*node, "fermentable_additions.yield", log);
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
            log.faults().add(potential->position, {.found = in_quotes(potential->text),
                                                   .expected = "a potential gravity such as 1.037"});
            return std::nullopt;
        }
        if (is_in_points(potential->text)) {
            log.remark(potential->position, RemarkKind::read_as,
                       fmt::format("a potential of {} is taken for {}", potential->text,
                                   shortest(*number_from(potential->text) / 1000.0)));
        }
        return Written{*extract, potential->position};
    }
    if (coarse) {
        log.remark(coarse->position, RemarkKind::read_as,
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

}  // namespace

void read_beerjson_fermentable(const Node& node, const std::vector<BoilStep>& steps, Draft& draft,
                               ExchangeLog& log) {
    Record record(node, "fermentable_additions", log);
    DraftFermentable fermentable;
    fermentable.position = node.position;
    fermentable.name = record.text("name");
    const auto type = record.text("type");
    fermentable.kind = kind_of_type(type ? type->text : "", fermentable.name ? fermentable.name->text : "");
    fermentable.group = group_of(record.text("grain_group"));
    fermentable.extract = read_yield(record, log);
    fermentable.color = record.amount("color", exchange_color_units());
    const BeerJsonTiming timing = read_beerjson_timing(record, steps, log);
    const bool has_amount = record.find("amount") != nullptr;
    fermentable.mass = weighed(record, quoted_name(fermentable.name), log);
    record.pass_over({"origin", "producer", "product_id", "notes", "inventory"});
    record.leave_out_others();
    if (timing.use == "add_to_package") {
        log.remark(timing.position, RemarkKind::left_out,
                   quoted_name(fermentable.name) +
                       " goes into the package: it carbonates and is no part of the grist");
        return;
    }
    if (timing.use == "add_to_boil" || timing.use == "add_to_fermentation") {
        fermentable.add = Written{timing.use == "add_to_boil" ? "boil" : "fermenter", timing.position};
    }
    // What has a unit that is not known was told; an amount that is missing the recipe's reader tells.
    if (fermentable.mass || !has_amount) {
        draft.grist.push_back(std::move(fermentable));
    }
}

}  // namespace entrywise

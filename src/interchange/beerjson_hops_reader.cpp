#include "interchange/beerjson_hops_reader.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/beerjson_words.hpp"
#include "interchange/exchange_units.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

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

}  // namespace

void read_beerjson_hop(const Node& node, const std::vector<BoilStep>& steps, Draft& draft, ExchangeLog& log) {
    Record record(node, "hop_additions", log);
    DraftHop hop;
    hop.position = node.position;
    hop.name = record.text("name");
    hop.alpha = record.amount("alpha_acid", exchange_share_units());
    hop.beta =
        if_some(record.amount("beta_acid", exchange_share_units()), quoted_name(hop.name), "beta acids", log);
    hop.form = form_of(record.text("form"), log);
    const bool has_amount = record.find("amount") != nullptr;
    hop.mass = weighed(record, quoted_name(hop.name), log);
    BeerJsonTiming timing = read_beerjson_timing(record, steps, log);
    if (const std::string use = use_beside_the_standard(record, log); !use.empty()) {
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
        hop.temperature = end_of_step("a stand of hops", timing.step->start, timing.step->end, log);
    } else if (timing.step && timing.step->kind == StepKind::before_boil) {
        add = "first wort";
    }
    if (timing.use.empty()) {
        log.remark(timing.position, RemarkKind::read_as,
                   quoted_name(hop.name) + " without a use is taken to be boiled");
    }
    hop.add = Written{std::string(add), timing.position};
    // Hops that go in before the boil stay for all of it, whatever the time says of their step.
    hop.time = add == "first wort" ? std::nullopt : timing.time;
    if (hop.mass || !has_amount) {
        draft.hops.push_back(std::move(hop));
    }
}

}  // namespace entrywise

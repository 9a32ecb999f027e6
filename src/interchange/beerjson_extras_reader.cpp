#include "interchange/beerjson_extras_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <utility>

#include "interchange/beerjson_words.hpp"
#include "interchange/exchange_units.hpp"
#include "interchange/extra_kind.hpp"

namespace entrywise {

void read_beerjson_extra(const Node& node, const std::vector<BoilStep>& steps, Draft& draft,
                         ExchangeLog& log) {
    Record record(node, "miscellaneous_additions", log);
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
        log.remark(amount->position, RemarkKind::left_out,
                   fmt::format("{}: a count says no mass", quoted_name(extra.name)));
    } else if (std::any_of(volumes.begin(), volumes.end(), is_volume)) {
        extra.volume = record.amount("amount", volumes);
    } else {
        extra.mass = record.amount("amount", exchange_mass_units());
    }
    const BeerJsonTiming timing = read_beerjson_timing(record, steps, log);
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
    draft.extras.push_back(std::move(extra));
}

}  // namespace entrywise

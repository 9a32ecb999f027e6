#include "interchange/beerjson_timing_reader.hpp"

#include "base/number.hpp"
#include "interchange/beerjson_words.hpp"
#include "interchange/exchange_units.hpp"

namespace entrywise {

std::vector<BoilStep> read_beerjson_boil(Record& recipe, Draft& draft, ExchangeLog& log) {
    std::vector<BoilStep> steps;
    const Node* const node = recipe.find("boil");
    if (node == nullptr) {
        return steps;
    }
    Record boil(*node, "boil", log);
    draft.boil_time = boil.amount("boil_time", exchange_time_units());
    bool boiled = false;
    for (const Node* const item : boil.items("boil_steps")) {
        Record step(*item, "boil_steps", log);
        const auto name = step.text("name");
        const bool is_boil = !boiled && name && holds(name->text, {"boil"}) && !holds(name->text, {"pre"});
        BoilStep known;
        known.kind = is_boil ? StepKind::boil : boiled ? StepKind::after_boil : StepKind::before_boil;
        known.start = step.amount("start_temperature", exchange_temperature_units());
        known.end = step.amount("end_temperature", exchange_temperature_units());
        boiled = boiled || is_boil;
        steps.push_back(known);
    }
    // Steps that never boil tell nothing of what comes before and after.
    if (!boiled) {
        steps.clear();
    }
    boil.pass_over({"name", "description", "notes"});
    boil.leave_out_others();
    return steps;
}

BeerJsonTiming read_beerjson_timing(Record& addition, const std::vector<BoilStep>& steps, ExchangeLog& log) {
    BeerJsonTiming timing;
    timing.position = addition.position();
    const Node* const node = addition.find("timing");
    if (node == nullptr) {
        return timing;
    }
    Record record(*node, addition.path() + ".timing", log);
    timing.position = node->position;
    if (const auto use = record.text("use")) {
        timing.use = use->text;
    }
    const auto time = record.amount("time", exchange_time_units());
    const auto duration = record.amount("duration", exchange_time_units());
    timing.time = duration ? duration : time;
    if (time && !duration) {
        log.remark(time->position, RemarkKind::read_as,
                   "a time without a duration is taken for how long an addition stays");
    }
    const auto step = record.number("step");
    const auto count = step ? number_from(step->text) : std::nullopt;
    if (count && timing.use == "add_to_boil" && *count >= 1.0 &&
        *count <= static_cast<double>(steps.size())) {
        timing.step = steps[static_cast<std::size_t>(*count) - 1];
    }
    record.leave_out_others();
    return timing;
}

}  // namespace entrywise

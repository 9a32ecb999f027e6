#pragma once

#include <optional>
#include <string>
#include <vector>

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "interchange/record.hpp"

namespace entrywise {

/// What happens in a step of the boil.
enum class StepKind { before_boil, boil, after_boil };

struct BoilStep {
    StepKind kind = StepKind::boil;
    std::optional<Written> start;
    std::optional<Written> end;
};

/// When something is added.
struct BeerJsonTiming {
    std::string use;
    std::optional<Written> time;
    std::optional<BoilStep> step;
    Position position;
};

/// Reads how long a BeerJSON recipe is boiled into the draft, and the steps that additions refer to.
std::vector<BoilStep> read_beerjson_boil(Record& recipe, Draft& draft, ExchangeLog& log);

BeerJsonTiming read_beerjson_timing(Record& addition, const std::vector<BoilStep>& steps, ExchangeLog& log);

}  // namespace entrywise

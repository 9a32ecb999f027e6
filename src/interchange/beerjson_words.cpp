#include "interchange/beerjson_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "interchange/exchange_units.hpp"

namespace entrywise {

bool holds(const std::string& text, std::initializer_list<std::string_view> words) {
    const std::string low = lowered(text);
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return low.find(word) != std::string::npos; });
}

std::string quoted_name(const std::optional<Written>& name) {
    return name ? in_quotes(name->text) : std::string("an ingredient without a name");
}

std::optional<Written> end_of_step(std::string_view what, const std::optional<Written>& start,
                                   const std::optional<Written>& end, ExchangeLog& log) {
    if (start && end && start->text != end->text) {
        log.remark(end->position, RemarkKind::read_as,
                   fmt::format("{} from {} to {}: {} taken", what, start->text, end->text, end->text));
    }
    return end ? end : start;
}

std::optional<Written> weighed(Record& addition, const std::string& name, ExchangeLog& log) {
    const std::string unit = addition.unit_of("amount");
    const auto is_unit = [&](const ExchangeUnit& known) { return known.unit == unit; };
    const auto volumes = exchange_volume_units();
    if (std::any_of(volumes.begin(), volumes.end(), is_unit)) {
        const auto amount = addition.amount("amount", volumes);
        log.remark(
            addition.find("amount")->position, RemarkKind::left_out,
            fmt::format("{}: {} is a volume, and a recipe weighs it", name, amount ? amount->text : unit));
        return std::nullopt;
    }
    return addition.amount("amount", exchange_mass_units());
}

}  // namespace entrywise

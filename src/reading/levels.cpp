#include "reading/levels.hpp"

#include <fmt/format.h>

#include <string>
#include <vector>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/values.hpp"

namespace entrywise {

namespace {

std::optional<double> level_from(std::string_view word, const Node& node, SensoryScale scale,
                                 FaultLog& faults) {
    const auto level = level_named(scale, word);
    if (!level) {
        const auto words = words_of(scale);
        const std::vector<std::string> known(words.begin(), words.end());
        faults.add(node.position, {.found = in_quotes(word),
                                   .expected = fmt::format("one or two of {}", listed(known)),
                                   .nearest = nearest_word(word, known),
                                   .remedy = "Write a span as low..high."});
    }
    return level;
}

}  // namespace

std::optional<LevelSpan> levels_from(const Node& node, SensoryScale scale, FaultLog& faults) {
    const auto text = scalar_text(node, "a level or low..high", faults);
    if (!text) {
        return std::nullopt;
    }
    const auto ends = text->find("..");
    const auto low = level_from(trimmed(text->substr(0, ends)), node, scale, faults);
    const auto high = ends == std::string_view::npos
                          ? low
                          : level_from(trimmed(text->substr(ends + 2)), node, scale, faults);
    if (!low || !high) {
        return std::nullopt;
    }
    if (*low > *high) {
        faults.add(node.position, {.found = in_quotes(*text),
                                   .expected = "the lower level first",
                                   .remedy = "Exchange the two words."});
        return std::nullopt;
    }
    return LevelSpan{*low, *high};
}

}  // namespace entrywise

#include "report/picture_level.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/drawing.hpp"
#include "report/sections.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

constexpr double level_height = 16.0;

std::string level_in_words(Attribute attribute, const Interval80<double>& level) {
    const SensoryScale scale = scale_of(attribute);
    const std::string_view low = word_for(scale, level.low);
    const std::string_view high = word_for(scale, level.high);
    return low == high
               ? std::string(word_for(scale, level.median))
               : fmt::format("{}, eight in ten from {} to {}", word_for(scale, level.median), low, high);
}

PictureWords words_of(Attribute attribute, const std::optional<Expectation>& accepted,
                      const Interval80<double>& level) {
    const std::string asked = !accepted ? std::string("the style says nothing of it")
                              : accepted->assumed
                                  ? fmt::format("taken for granted: {}", accepted_words(attribute, *accepted))
                                  : fmt::format("accepted: {}", accepted_words(attribute, *accepted));
    return {fmt::format("{} as sensed", spoken(word_of(attribute))),
            fmt::format("{}; {}.", level_in_words(attribute, level), asked)};
}

}  // namespace

double top_of(SensoryScale scale) {
    return static_cast<double>(words_of(scale).size() - 1);
}

std::string level_picture(Attribute attribute, const std::optional<Expectation>& accepted,
                          const Interval80<double>& level, bool out) {
    // A level is a word, so a band reaches a little to both sides of it.
    constexpr double half_a_word = 0.3;
    const double top = top_of(scale_of(attribute));
    const Axis axis(-half_a_word, top + half_a_word, 0.5, 99.5);
    Drawing drawing =
        Drawing::stretched(out ? "level out" : "level", level_height, words_of(attribute, accepted, level));
    for (double step = 0.0; step <= top; step += 1.0) {
        drawing.line("tick", {axis.at(step), level_height / 2.0 - 2.0},
                     {axis.at(step), level_height / 2.0 + 2.0});
    }
    if (accepted) {
        const double from = axis.at(accepted->low - half_a_word);
        const double to = axis.at(accepted->high + half_a_word);
        drawing.rectangle(accepted->assumed ? "band assumed" : "band", {from, 1.5}, to - from,
                          level_height - 3.0);
    }
    drawing.line("span", {axis.at(level.low), level_height / 2.0}, {axis.at(level.high), level_height / 2.0});
    drawing.line("middle", {axis.at(level.median), 1.5}, {axis.at(level.median), level_height - 1.5});
    return drawing.svg();
}

}  // namespace entrywise

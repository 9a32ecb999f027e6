#include "tools/validation/ranking_part.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "tools/validation/markdown.hpp"

namespace entrywise {

Part section_of_ranking(const MovedConstants& moved) {
    std::vector<std::size_t> order;
    std::vector<std::string> nothing;
    const auto all = [&](std::size_t index) {
        return moved.of_demo_beers[index].all() + moved.of_generated[index].all();
    };
    for (std::size_t index = 0; index < moved.of_demo_beers.size(); ++index) {
        if (all(index) > 0) {
            order.push_back(index);
        } else {
            nothing.push_back('`' + moved.of_demo_beers[index].name + '`');
        }
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t first, std::size_t second) { return all(first) > all(second); });
    std::string text = "## What the ranking hangs on\n\n";
    text += paragraph(fmt::format(
        "Each of the {} constants of `styles/perception.yaml` moved by a fifth down and up, the others as "
        "they are, "
        "over the styles of `bjcp-2021`: for how many of the {} demo beers, and of {} generated entries "
        "(`tools/generate-entries`), another style comes first. Those that matter most stand first. A move "
        "shifts "
        "the beer and what a style's own numbers give alike (`src/judging/guide_habit.hpp`), which takes "
        "much of it "
        "back. How much hangs on the weights of the ranking itself is not told here.",
        moved.of_demo_beers.size(), moved.demo_beers, moved.generated));
    text += head({"Constant", "Demo beers, down", "up", "Generated, down", "up"});
    for (const std::size_t index : order) {
        const ConstantMoved& demo = moved.of_demo_beers[index];
        const ConstantMoved& generated = moved.of_generated[index];
        text += row({'`' + demo.name + '`', fmt::format("{}", demo.down), fmt::format("{}", demo.up),
                     fmt::format("{}", generated.down), fmt::format("{}", generated.up)});
    }
    text +=
        '\n' + paragraph(fmt::format("{} constants change no first place: {}.", nothing.size(),
                                     nothing.empty() ? "none" : fmt::format("{}", fmt::join(nothing, ", "))));
    return {ranking_section, text};
}

}  // namespace entrywise

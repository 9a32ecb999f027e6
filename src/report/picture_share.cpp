#include "report/picture_share.hpp"

#include <fmt/format.h>

#include "report/drawing.hpp"
#include "report/number_table.hpp"

namespace entrywise {

std::string share_picture(std::string_view of_what, double share) {
    constexpr double height = 8.0;
    Drawing drawing =
        Drawing::stretched("share", height, {fmt::format("{} {}", percent_text(share), of_what), {}});
    drawing.line("ground", {0.0, height / 2.0}, {100.0, height / 2.0});
    drawing.rectangle("part", {0.0, 0.0}, 100.0 * share, height);
    return drawing.svg();
}

std::string chance_picture(std::string_view of_what, double chance) {
    constexpr double height = 12.0;
    constexpr double one_in_five = 20.0;
    constexpr double even_odds = 50.0;
    Drawing drawing = Drawing::stretched("chance", height,
                                         {fmt::format("{} {}", percent_text(chance), of_what),
                                          "Marks stand at one in five and at even odds."});
    drawing.line("ground", {0.0, height / 2.0}, {100.0, height / 2.0});
    drawing.rectangle("part", {0.0, 2.0}, 100.0 * chance, height - 4.0);
    for (const double mark : {one_in_five, even_odds}) {
        drawing.line("post", {mark, 0.0}, {mark, height});
    }
    return drawing.svg();
}

}  // namespace entrywise

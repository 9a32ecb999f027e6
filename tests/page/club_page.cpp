// Prints the page of an invented club's evening. Use: club_page COUNT

#include "report/club_page.hpp"

#include <fmt/format.h>

#include <array>
#include <cstddef>
#include <cstdlib>
#include <string>

#include "base/number.hpp"

namespace {

using namespace entrywise;

struct Category {
    const char* code;
    const char* name;
};

/// As varied as an evening is, without a random number in it.
ClubRow row_of(std::size_t index) {
    static constexpr std::array<Category, 7> categories{{{"5D", "German Pils"},
                                                         {"11B", "Best Bitter"},
                                                         {"13A", "Dark Mild"},
                                                         {"18B", "American Pale Ale"},
                                                         {"20A", "American Porter"},
                                                         {"21A", "American IPA"},
                                                         {"25B", "Saison"}}};
    static constexpr std::array<const char*, 5> statuses{"ready", "look", "ready", "move", "incomplete"};
    const Category& category = categories[index % categories.size()];
    const double at_risk = static_cast<double>(index * 37 % 113) / 10.0;
    ClubRow row;
    row.entry = std::to_string(index + 1);
    row.name = fmt::format("Harbor & Hop <{}>", index * 7919 % 1000);
    row.category = category.code;
    row.style = category.name;
    row.status = statuses[index * 11 % statuses.size()];
    row.at_risk = at_risk;
    row.at_risk_span = fmt::format("{}–{}", fixed(at_risk / 2.0, 1), fixed(at_risk * 1.7 + 0.4, 1));
    row.suggestion = row.status == "move" ? "to 22A Double IPA, 3.1 points less" : "";
    row.details = {
        "Flavor: caramel above the style, 4.1 points, noticed by 86 %.",
        "Caramel flavor comes out medium; the style asks for none to low: toffee sits over the rest.",
        "Flavor: bitterness above the style, 0.6 points, noticed by 21 %.", "Contains gluten."};
    return row;
}

}  // namespace

int main(int count, char** words) {
    const auto wanted = count == 2 ? number_from(words[1]) : std::nullopt;
    if (!wanted) {
        fmt::print(stderr, "Use: club_page COUNT\n");
        return 2;
    }
    ClubPage page;
    page.title = "Saltmarsh Brewers’ club night";
    page.statuses = {{"unreadable", "could not be read"},
                     {"incomplete", "the form leaves something out"},
                     {"move", "would do better elsewhere"},
                     {"look", "worth a talk"},
                     {"ready", "nothing to say"}};
    for (std::size_t index = 0; index < static_cast<std::size_t>(*wanted); ++index) {
        page.rows.push_back(row_of(index));
    }
    fmt::print("{}", club_page(page));
}

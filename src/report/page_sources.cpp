#include "report/page_sources.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "base/number.hpp"
#include "report/number_table.hpp"
#include "report/picture_share.hpp"

namespace entrywise {

namespace {

struct Whole {
    std::string_view word;
    const std::vector<SourceShare>& sources;
};

struct Line {
    std::string ingredient;
    Position position;
    std::array<double, 3> shares{};
};

Line& line_of(std::vector<Line>& lines, const SourceShare& source) {
    const auto found = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
        return line.position.line == source.position.line && line.position.column == source.position.column &&
               line.ingredient == source.ingredient;
    });
    if (found != lines.end()) {
        return *found;
    }
    lines.push_back({source.ingredient, source.position, {}});
    return lines.back();
}

}  // namespace

Json source_values(const Beer& beer) {
    const std::array<Whole, 3> wholes{{{"of the gravity", beer.original_gravity.sources},
                                       {"of the color", beer.color.sources},
                                       {"of the bitterness", beer.bitterness.sources}}};
    std::vector<Line> lines;
    for (std::size_t index = 0; index < wholes.size(); ++index) {
        for (const SourceShare& source : wholes[index].sources) {
            line_of(lines, source).shares[index] = source.share;
        }
    }
    Json values = Json::array();
    for (const Line& line : lines) {
        Json shares = Json::array();
        for (std::size_t index = 0; index < wholes.size(); ++index) {
            const double share = line.shares[index];
            shares.push_back(
                {{"share", share > 0.0 ? percent_text(share) : std::string()},
                 {"picture", share > 0.0 ? share_picture(wholes[index].word, share) : std::string()}});
        }
        values.push_back({{"name", line.ingredient}, {"shares", std::move(shares)}});
    }
    return values;
}

std::string other_bitterness_words(const Beer& beer) {
    const OtherBitterness& other = beer.other_bitterness;
    return fmt::format("By other formulas: Tinseth {}, Rager {}, Garetz {} IBU.",
                       fixed(in(other.tinseth, ibu), 0), fixed(in(other.rager, ibu), 0),
                       fixed(in(other.garetz, ibu), 0));
}

}  // namespace entrywise

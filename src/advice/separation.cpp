#include "advice/separation.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string_view>

namespace entrywise {

namespace {

std::string levels_in_words(double levels) {
    const auto whole = static_cast<std::size_t>(std::clamp(std::round(levels), 1.0, 4.0));
    constexpr std::array<std::string_view, 4> words{"one level", "two levels", "three levels", "four levels"};
    return std::string(words[whole - 1]);
}

}  // namespace

std::vector<Separation> separations_of(const std::vector<RankedStyle>& styles, std::size_t shown) {
    constexpr std::size_t most = 6;
    constexpr double least_difference = 0.5;
    std::map<std::string, std::vector<double>> points;
    const std::size_t sheets = std::min(shown, styles.size());
    for (std::size_t index = 0; index < sheets; ++index) {
        for (const Finding& finding : styles[index].sheet->findings) {
            points[id_of(finding)].resize(sheets, 0.0);
            points[id_of(finding)][index] = finding.points;
        }
    }
    const auto spread = [](const Separation& separation) {
        const auto [low, high] = std::minmax_element(separation.points.begin(), separation.points.end());
        return *high - *low;
    };
    std::vector<Separation> separations;
    for (const auto& [id, costs] : points) {
        if (spread({id, costs}) >= least_difference) {
            separations.push_back({id, costs});
        }
    }
    std::stable_sort(
        separations.begin(), separations.end(),
        [&](const Separation& first, const Separation& second) { return spread(first) > spread(second); });
    separations.resize(std::min(separations.size(), most));
    return separations;
}

std::vector<std::string> near_misses_of(const std::vector<RankedStyle>& styles, std::size_t shown) {
    const bool of_several_guides = std::any_of(styles.begin(), styles.end(), [&](const RankedStyle& style) {
        return style.name.guide != styles.front().name.guide;
    });
    std::vector<std::string> near_misses;
    for (std::size_t index = 1; index < std::min(shown, styles.size()); ++index) {
        const RankedStyle& style = styles[index];
        const double behind = style.distance - styles.front().distance;
        for (const Finding& finding : style.sheet->findings) {
            const bool is_level = attribute_named(finding.section, finding.attribute).has_value();
            if (finding.points < behind || !is_level) {
                continue;
            }
            const bool above = finding.direction == Direction::above;
            const double levels =
                above ? finding.level - finding.accepted_high : finding.accepted_low - finding.level;
            near_misses.push_back(levels_in_words(levels) + (above ? " less " : " more ") +
                                  spoken(finding.attribute) + " and " +
                                  (of_several_guides ? style.name.guide + "/" : "") + style.name.code + " " +
                                  style.title + " leads");
            break;
        }
    }
    return near_misses;
}

}  // namespace entrywise

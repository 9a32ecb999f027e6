#include "report/sections.hpp"

#include <algorithm>

namespace entrywise {

std::string_view title_of(Section section) {
    return section == Section::overall ? "overall impression" : word_of(section);
}

double all_points_of(const ScoreSheet& score_sheet) {
    double points = 0.0;
    for (const Section section : sheet_sections) {
        points += score_sheet.points[section];
    }
    return points;
}

std::string spoken(std::string_view attribute_word) {
    std::string result(attribute_word);
    std::replace(result.begin(), result.end(), '_', ' ');
    return result == "dms" ? "DMS" : result;
}

}  // namespace entrywise

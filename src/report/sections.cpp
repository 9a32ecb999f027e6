#include "report/sections.hpp"

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

}  // namespace entrywise

#include "report/sheet_text.hpp"

#include "base/number.hpp"
#include "report/gauge.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

constexpr int points_decimals = 1;

std::string of_points(double points) {
    return at_right("of", 5) + at_right(shortest(points), 3);
}

std::string line_of(std::string_view name, const PointsAtRisk& at_risk, double points,
                    const TextStyle& style) {
    const Interval80<double> interval{at_risk.median, at_risk.low, at_risk.high};
    std::string line = table_line(name, points_text(at_risk.median),
                                  interval_text(interval, points_decimals, style), of_points(points));
    constexpr std::size_t fewest_bar_columns = 10;
    const std::size_t left = style.width - table_columns - gap_columns;
    if (style.width >= table_columns + gap_columns + fewest_bar_columns) {
        const std::size_t columns = left < 20 ? left : 20;
        line += std::string(gap_columns, ' ') +
                bar(rounded(at_risk.median, points_decimals), points, columns, style);
    }
    return without_blanks_at_end(line);
}

}  // namespace

std::string points_text(double points) {
    return fixed(points, points_decimals);
}

std::string sheet_text(const Sheet& sheet, const ScoreSheet& score_sheet, const TextStyle& style) {
    std::string text = bold(without_blanks_at_end(table_line("Predicted sheet", "risk",
                                                             at_right("8 in 10", 9), at_right("points", 8))),
                            style) +
                       '\n';
    double all_points = 0.0;
    for (const Section section : sheet_sections) {
        const double points = score_sheet.points[section];
        all_points += points;
        text += line_of(title_of(section), sheet.at_risk[section], points, style) + '\n';
    }
    return text + bold(line_of("all", sheet.total, all_points, style), style) + '\n';
}

}  // namespace entrywise

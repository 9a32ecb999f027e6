#include "report/rank_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/text.hpp"
#include "report/finding_title.hpp"
#include "report/heading.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_rows = 10;
constexpr std::size_t explained = 3;

constexpr std::size_t place_columns = 4;
constexpr std::size_t points_columns = 8;
constexpr std::size_t interval_columns = 12;
constexpr std::size_t chance_columns = 8;

std::string percent_text(double chance) {
    return fmt::format("{:.0f} %", 100.0 * chance);
}

std::string name_of(const RankedStyle& ranked) {
    const std::string name = ranked.name.code + " " + ranked.title;
    return ranked.base ? name + ", on " + ranked.base->code : name;
}

std::string interval_text(const PointsAtRisk& at_risk, const TextStyle& style) {
    return points_text(at_risk.low) + std::string(dash(style)) + points_text(at_risk.high);
}

std::string row(const std::string& place, const std::string& name, std::size_t name_columns,
                const std::vector<std::string>& figures) {
    return at_left(place, place_columns) + at_left(name, name_columns) +
           at_right(figures[0], points_columns) + at_right(figures[1], interval_columns) +
           at_right(figures[2], chance_columns) + at_right(figures[3], chance_columns);
}

std::string table_text(const Ranking& ranking, const TextStyle& style) {
    const std::size_t name_columns =
        style.width - place_columns - points_columns - interval_columns - 2 * chance_columns;
    std::string text =
        bold(row("", "Style", name_columns, {"at risk", "8 in 10", "inside", "best"}), style) + '\n';
    for (std::size_t index = 0; index < std::min(most_rows, ranking.styles.size()); ++index) {
        const RankedStyle& ranked = ranking.styles[index];
        const std::string name = cut_end(shown(name_of(ranked), style), name_columns - 1, style);
        text += row(at_right(std::to_string(index + 1), 2), name, name_columns,
                    {points_text(ranked.at_risk.median), interval_text(ranked.at_risk, style),
                     percent_text(ranked.within), percent_text(ranked.best)}) +
                '\n';
    }
    return text + paragraph(
                      "At risk: points that the recipe puts at risk, of 50. Inside: the chance that all "
                      "numbers are in the style's ranges. Best: the chance that it is the best choice; "
                      "this and the order also count how near the beer is to the heart of the style and "
                      "what is customary for it.",
                      0, 0, style);
}

/// The style of the first rows that loses fewest points, where that is not the first.
std::string fewest_points_text(const Ranking& ranking, const TextStyle& style) {
    constexpr double worth_telling = 1.0;
    const auto rows =
        ranking.styles.begin() + static_cast<std::ptrdiff_t>(std::min(most_rows, ranking.styles.size()));
    const auto fewest = std::min_element(
        ranking.styles.begin(), rows,
        [](const auto& left, const auto& right) { return left.at_risk.median < right.at_risk.median; });
    if (ranking.styles.front().at_risk.median - fewest->at_risk.median < worth_telling) {
        return {};
    }
    return '\n' +
           paragraph(
               shown(fmt::format("Fewest points at risk of these: {}, {}. By points alone it is the safer "
                                 "entry; more in it speaks for another style.",
                                 name_of(*fewest), points_text(fewest->at_risk.median)),
                     style),
               0, 0, style);
}

/// What speaks against a style: its dearest findings and what is not customary.
std::string against_text(const RankedStyle& ranked, const TextStyle& style) {
    constexpr std::size_t most_findings = 3;
    std::vector<std::string> reasons;
    for (std::size_t index = 0; index < std::min(most_findings, ranked.sheet->findings.size()); ++index) {
        const Finding& finding = ranked.sheet->findings[index];
        reasons.push_back(in_a_sentence(finding) + ": " + points_text(finding.points));
    }
    reasons.insert(reasons.end(), ranked.departures.begin(), ranked.departures.end());
    const std::string text = reasons.empty() ? "nothing to mark down" : joined(reasons, "; ");
    return paragraph(shown(ranked.name.code + ": " + text + ".", style), 0, 2, style);
}

std::string separations_text(const Ranking& ranking, const TextStyle& style) {
    if (ranking.separations.empty()) {
        return {};
    }
    const std::size_t styles = ranking.separations.front().points.size();
    constexpr std::size_t code_columns = 9;
    const std::size_t what_columns = style.width - styles * code_columns;
    std::string head = at_left(cut_end("What separates them, points", what_columns - 1, style), what_columns);
    for (std::size_t index = 0; index < styles; ++index) {
        head += at_right(cut_end(shown(ranking.styles[index].name.code, style), code_columns - 1, style),
                         code_columns);
    }
    std::string text = '\n' + bold(head, style) + '\n';
    for (const Separation& separation : ranking.separations) {
        std::string what = spoken(separation.id);
        std::replace(what.begin(), what.end(), '.', ' ');
        text += at_left(cut_end(what, what_columns - 1, style), what_columns);
        for (const double points : separation.points) {
            text += at_right(points_text(points), code_columns);
        }
        text += '\n';
    }
    return text;
}

std::string near_misses_text(const Ranking& ranking, const TextStyle& style) {
    std::string text;
    for (const std::string& near_miss : ranking.near_misses) {
        text += (text.empty() ? "\n" : "") + paragraph(shown("Near: " + near_miss + ".", style), 0, 2, style);
    }
    return text;
}

/// What it comes to that another style than the declared one leads.
std::string verdict_on(const RankedStyle& declared, const RankedStyle& first) {
    constexpr double worth_telling = 1.0;
    const double gain = declared.at_risk.median - first.at_risk.median;
    if (gain >= worth_telling) {
        return fmt::format("It would do better there, by about {} points.", points_text(gain));
    }
    if (gain <= -worth_telling) {
        return fmt::format(
            "It loses about {} points more there, yet it is nearer to the heart of that style.",
            points_text(-gain));
    }
    return "The points are about even; it is nearer to the heart of that style.";
}

/// Both sheets side by side, where another style than the declared one leads.
std::string elsewhere_text(const Ranking& ranking, const ScoreSheet& score_sheet, const TextStyle& style) {
    if (!ranking.declared || *ranking.declared == 0) {
        return {};
    }
    const RankedStyle& first = ranking.styles.front();
    const RankedStyle& declared = ranking.styles[*ranking.declared];
    constexpr std::size_t name_columns = 24;
    constexpr std::size_t columns = 12;
    const auto line = [&](std::string_view name, const std::string& now, const std::string& there,
                          const std::string& of) {
        return at_left(name, name_columns) + at_right(now, columns) + at_right(there, columns) +
               at_right(of, columns) + '\n';
    };
    const auto code = [&](const RankedStyle& ranked) {
        return cut_end(shown(ranked.name.code, style), columns - 1, style);
    };
    std::string text = '\n' + paragraph(shown(fmt::format("Declared {} comes in place {}; {} leads. {}",
                                                          declared.name.code, *ranking.declared + 1,
                                                          name_of(first), verdict_on(declared, first)),
                                              style),
                                        0, 0, style);
    text += bold(line("Points at risk", code(declared), code(first), "of"), style);
    double all = 0.0;
    for (const Section section : sheet_sections) {
        all += score_sheet.points[section];
        text += line(title_of(section), points_text(declared.sheet->at_risk[section].median),
                     points_text(first.sheet->at_risk[section].median),
                     fmt::format("{:.0f}", score_sheet.points[section]));
    }
    return text + line("all", points_text(declared.sheet->total.median),
                       points_text(first.sheet->total.median), fmt::format("{:.0f}", all));
}

std::string declarations_text(const RankedStyle& first, const TextStyle& style) {
    std::vector<std::string> said;
    for (const Declaration& declaration : first.declarations) {
        said.push_back(declaration.said);
    }
    if (first.base) {
        said.push_back("that it stands on " + first.base->code + " " + first.base_title);
    }
    if (said.empty()) {
        return {};
    }
    return '\n' + paragraph(shown("To enter it as " + first.name.code + ", the form must say " +
                                      listed(said, "and") + ".",
                                  style),
                            0, 0, style);
}

}  // namespace

std::string rank_text(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
                      const TextStyle& style) {
    std::string text = heading(recipe.name, "where to enter", recipe.file, style);
    if (ranking.styles.empty()) {
        return text + paragraph("None of these styles says enough to hold a beer against it.", 0, 0, style);
    }
    text += table_text(ranking, style) + fewest_points_text(ranking, style) + '\n';
    for (std::size_t index = 0; index < std::min(explained, ranking.styles.size()); ++index) {
        text += against_text(ranking.styles[index], style);
    }
    return text + separations_text(ranking, style) + near_misses_text(ranking, style) +
           elsewhere_text(ranking, score_sheet, style) + declarations_text(ranking.styles.front(), style);
}

}  // namespace entrywise

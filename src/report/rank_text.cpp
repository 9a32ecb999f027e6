#include "report/rank_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/text.hpp"
#include "report/finding_title.hpp"
#include "report/heading.hpp"
#include "report/rank_words.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t place_columns = 4;
constexpr std::size_t points_columns = 8;
constexpr std::size_t interval_columns = 12;
constexpr std::size_t chance_columns = 8;

std::string percent_text(double chance) {
    return fmt::format("{:.0f} %", 100.0 * chance);
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
    for (std::size_t index = 0; index < std::min(most_ranked_shown, ranking.styles.size()); ++index) {
        const RankedStyle& ranked = ranking.styles[index];
        const std::string name = cut_end(shown(name_of(ranked), style), name_columns - 1, style);
        text += row(at_right(std::to_string(index + 1), 2), name, name_columns,
                    {points_text(ranked.at_risk.median), interval_text(ranked.at_risk, style),
                     percent_text(ranked.within), percent_text(ranked.best)}) +
                '\n';
    }
    return text + paragraph(rank_table_words(), 0, 0, style);
}

std::string fewest_points_text(const Ranking& ranking, const TextStyle& style) {
    const std::string words = fewest_points_words(ranking);
    return words.empty() ? words : '\n' + paragraph(shown(words, style), 0, 0, style);
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
        text += at_left(cut_end(words_of(separation), what_columns - 1, style), what_columns);
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
    std::string text = '\n' + paragraph(shown(elsewhere_words(ranking), style), 0, 0, style);
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
    const std::string words = declaration_words(first);
    return words.empty() ? words : '\n' + paragraph(shown(words, style), 0, 0, style);
}

}  // namespace

std::string rank_text(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
                      const TextStyle& style) {
    std::string text = heading(recipe.name, "where to enter", recipe.file, style);
    if (ranking.styles.empty()) {
        return text + paragraph("None of these styles says enough to hold a beer against it.", 0, 0, style);
    }
    text += table_text(ranking, style) + fewest_points_text(ranking, style) + '\n';
    for (std::size_t index = 0; index < std::min(most_ranked_explained, ranking.styles.size()); ++index) {
        text += against_text(ranking.styles[index], style);
    }
    return text + separations_text(ranking, style) + near_misses_text(ranking, style) +
           elsewhere_text(ranking, score_sheet, style) + declarations_text(ranking.styles.front(), style);
}

}  // namespace entrywise

#include "report/rank_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
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
constexpr std::size_t rank_points_columns = 8;
constexpr std::size_t interval_columns = 12;
constexpr std::size_t chance_columns = 8;

std::string percent_text(double chance) {
    return fmt::format("{:.0f} %", 100.0 * chance);
}

/// How the styles of one ranking are told apart.
struct Naming {
    bool with_guide = false;  ///< where they are of several guides
    const std::optional<Competition>* competition = nullptr;
};

Naming naming_of(const Ranking& ranking, const std::optional<Competition>& competition) {
    return {is_of_several_guides(ranking), &competition};
}

const CompetitionTable* table_for(const RankedStyle& ranked, const Naming& naming) {
    return *naming.competition ? table_of(**naming.competition, ranked.name) : nullptr;
}

/// The name in a row, with the table that a competition judges it at, which is never cut away.
std::string name_in_row(const RankedStyle& ranked, const Naming& naming, std::size_t columns,
                        const TextStyle& style) {
    constexpr std::size_t table_columns = 16;
    const CompetitionTable* table = table_for(ranked, naming);
    const std::string at_table = table == nullptr ? std::string()
                                                  : cut_end(shown(", table " + table->code, style),
                                                            std::min(table_columns, columns), style);
    return cut_end(shown(name_of(ranked, naming.with_guide), style), columns - character_count(at_table),
                   style) +
           at_table;
}

std::string row(const std::string& place, const std::string& name, std::size_t name_columns,
                const std::vector<std::string>& figures) {
    return at_left(place, place_columns) + at_left(name, name_columns) +
           at_right(figures[0], rank_points_columns) + at_right(figures[1], interval_columns) +
           at_right(figures[2], chance_columns) + at_right(figures[3], chance_columns);
}

std::string table_text(const Ranking& ranking, const Naming& naming, const TextStyle& style) {
    const std::size_t name_columns =
        style.width - place_columns - rank_points_columns - interval_columns - 2 * chance_columns;
    std::string text =
        bold(row("", "Style", name_columns, {"at risk", "8 in 10", "inside", "best"}), style) + '\n';
    for (std::size_t index = 0; index < std::min(most_ranked_shown, ranking.styles.size()); ++index) {
        const RankedStyle& ranked = ranking.styles[index];
        const std::string name = name_in_row(ranked, naming, name_columns - 1, style);
        text += row(at_right(std::to_string(index + 1), 2), name, name_columns,
                    {points_text(ranked.at_risk.median), points_interval_text(ranked.at_risk, style),
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
std::string against_text(const RankedStyle& ranked, const Naming& naming, const TextStyle& style) {
    constexpr std::size_t most_findings = 3;
    std::vector<std::string> reasons;
    for (std::size_t index = 0; index < std::min(most_findings, ranked.sheet->findings.size()); ++index) {
        const Finding& finding = ranked.sheet->findings[index];
        reasons.push_back(in_a_sentence(finding) + ": " + points_text(finding.points));
    }
    reasons.insert(reasons.end(), ranked.departures.begin(), ranked.departures.end());
    const std::string text = reasons.empty() ? "nothing to mark down" : joined(reasons, "; ");
    return paragraph(shown(code_of(ranked.name, naming.with_guide) + ": " + text + ".", style), 0, 2, style);
}

/// The codes of the first styles above their columns, the guides above them where they are of several.
std::string separations_head(const Ranking& ranking, const Naming& naming, std::size_t styles,
                             std::size_t code_columns, const TextStyle& style) {
    const std::size_t what_columns = style.width - styles * code_columns;
    const auto line = [&](std::string_view what, const auto& word_of) {
        std::string text = at_left(cut_end(what, what_columns - 1, style), what_columns);
        for (std::size_t index = 0; index < styles; ++index) {
            const std::string word = shown(word_of(ranking.styles[index].name), style);
            text += at_right(cut_end(word, code_columns - 1, style), code_columns);
        }
        return bold(text, style) + '\n';
    };
    const std::string guides =
        naming.with_guide ? line("", [](const StyleName& name) { return name.guide; }) : std::string();
    return guides + line("What separates them, points", [](const StyleName& name) { return name.code; });
}

std::string separations_text(const Ranking& ranking, const Naming& naming, const TextStyle& style) {
    if (ranking.separations.empty()) {
        return {};
    }
    constexpr std::size_t least_what_columns = 24;
    const std::size_t code_columns = naming.with_guide ? 10 : 9;
    const std::size_t styles = std::min(ranking.separations.front().points.size(),
                                        (style.width - least_what_columns) / code_columns);
    const std::size_t what_columns = style.width - styles * code_columns;
    std::string text = '\n' + separations_head(ranking, naming, styles, code_columns, style);
    for (const Separation& separation : ranking.separations) {
        text += at_left(cut_end(words_of(separation), what_columns - 1, style), what_columns);
        for (std::size_t index = 0; index < styles; ++index) {
            text += at_right(points_text(separation.points[index]), code_columns);
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
std::string elsewhere_text(const Ranking& ranking, const ScoreSheet& score_sheet, const Naming& naming,
                           const TextStyle& style) {
    if (!ranking.declared || *ranking.declared == 0) {
        return {};
    }
    const RankedStyle& first = ranking.styles.front();
    const RankedStyle& declared = ranking.styles[*ranking.declared];
    // With guides as wide as the narrowest page, 60 columns.
    constexpr std::size_t name_columns = 20;
    constexpr std::size_t of_columns = 6;
    const std::size_t code_columns = naming.with_guide ? 17 : 12;
    const auto line = [&](std::string_view name, const std::string& now, const std::string& there,
                          const std::string& of) {
        return at_left(name, name_columns) + at_right(now, code_columns) + at_right(there, code_columns) +
               at_right(of, of_columns) + '\n';
    };
    const auto code = [&](const RankedStyle& ranked) {
        return cut_end(shown(code_of(ranked.name, naming.with_guide), style), code_columns - 1, style);
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

std::string declarations_text(const Ranking& ranking, const TextStyle& style) {
    const std::string words = declaration_words(ranking.styles.front(), is_of_several_guides(ranking));
    return words.empty() ? words : '\n' + paragraph(shown(words, style), 0, 0, style);
}

/// The tables of the styles that are listed, by their whole names, and what else the competition lays down.
std::string competition_text(const Ranking& ranking, const Naming& naming, const TextStyle& style) {
    if (!*naming.competition) {
        return {};
    }
    const Competition& competition = **naming.competition;
    std::vector<std::string> tables;
    for (std::size_t index = 0; index < std::min(most_ranked_shown, ranking.styles.size()); ++index) {
        const CompetitionTable* table = table_for(ranking.styles[index], naming);
        const std::string name =
            table == nullptr || table->name.empty() ? std::string() : table->code + " " + table->name;
        if (!name.empty() && std::find(tables.begin(), tables.end(), name) == tables.end()) {
            tables.push_back(name);
        }
    }
    std::string text = "Styles that " + competition.name + " accepts";
    text += tables.empty() ? "." : "; its tables here: " + joined(tables, ", ") + ".";
    if (competition.entries_per_brewer) {
        text += fmt::format(" At most {} {} from one brewer.", *competition.entries_per_brewer,
                            *competition.entries_per_brewer == 1 ? "entry" : "entries");
    }
    return '\n' + paragraph(shown(text, style), 0, 0, style);
}

/// What is wrong with declaring a style that the competition does not judge.
std::string not_accepted_text(const Ranking& ranking, const std::optional<StyleName>& declared,
                              const Naming& naming, const TextStyle& style) {
    const bool is_told =
        *naming.competition && declared && !ranking.declared && !accepts(**naming.competition, *declared);
    return is_told
               ? '\n' + paragraph(shown(fmt::format("Declared {} is not accepted by {}.",
                                                    code_of(*declared, true), (*naming.competition)->name),
                                        style),
                                  0, 0, style)
               : std::string();
}

}  // namespace

std::string rank_text(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
                      const std::optional<Competition>& competition, const TextStyle& style) {
    std::string text = heading(recipe.name, "where to enter", recipe.file, style);
    if (ranking.styles.empty()) {
        return text + paragraph("None of these styles says enough to hold a beer against it.", 0, 0, style);
    }
    const Naming naming = naming_of(ranking, competition);
    text += table_text(ranking, naming, style) + competition_text(ranking, naming, style) +
            fewest_points_text(ranking, style) + '\n';
    for (std::size_t index = 0; index < std::min(most_ranked_explained, ranking.styles.size()); ++index) {
        text += against_text(ranking.styles[index], naming, style);
    }
    return text + separations_text(ranking, naming, style) + near_misses_text(ranking, style) +
           elsewhere_text(ranking, score_sheet, naming, style) + declarations_text(ranking, style) +
           not_accepted_text(ranking, recipe.style, naming, style);
}

}  // namespace entrywise

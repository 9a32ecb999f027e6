#include "report/mend_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/beer_numbers.hpp"
#include "report/finding_title.hpp"
#include "report/heading.hpp"
#include "report/mend_words.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"
#include "report/style_title.hpp"

namespace entrywise {

namespace {

constexpr std::size_t change_indent = 3;
constexpr std::size_t before_columns = 10;

/// The columns that a setting takes, before and after a change.
std::size_t columns_of_setting(const TextStyle& style) {
    return style.width < 76 ? 13 : 16;
}

std::string changes_text(const std::vector<Change>& changes, const Measures& measures,
                         const TextStyle& style) {
    const std::size_t setting_columns = columns_of_setting(style);
    const std::size_t what_columns = style.width - change_indent - 2 * setting_columns;
    std::string text;
    for (const Change& change : changes) {
        const std::string what = cut_end(shown(change.what, style), what_columns - 1, style);
        const std::string from = cut_end(shown(setting_words(change, change.from, "none", measures), style),
                                         setting_columns - 1, style);
        const std::string to = cut_end(shown(setting_words(change, change.to, "left out", measures), style),
                                       setting_columns - 1, style);
        text += std::string(change_indent, ' ') + at_left(what, what_columns) +
                at_right(from, setting_columns) + bold(at_right(to, setting_columns), style) + '\n';
    }
    return text;
}

std::string compared_line(std::string_view name, const std::string& before, const std::string& after,
                          const std::string& asked) {
    return without_blanks_at_end(std::string(change_indent, ' ') + at_left(name, 20) +
                                 at_right(before, before_columns) + at_right(after, before_columns) + "  " +
                                 asked) +
           '\n';
}

std::string numbers_compared(const Beer& before, const Beer& after, const Style& judged,
                             const TextStyle& style) {
    const std::vector<BeerNumber> was = numbers_of(before);
    const std::vector<BeerNumber> is = numbers_of(after);
    std::string text;
    for (std::size_t index = 0; index < was.size(); ++index) {
        const bool of_guide = index < guide_numbers().size();
        if (!of_guide && was[index].key != "carbonation") {
            continue;
        }
        const auto range =
            of_guide ? range_of(judged.ranges, guide_numbers()[index]) : std::optional<PlainRange>();
        const std::string name = was[index].unit == "SG"
                                     ? std::string(was[index].name)
                                     : fmt::format("{}, {}", was[index].name, was[index].unit);
        text += compared_line(name, fixed(was[index].value.median, was[index].decimals),
                              fixed(is[index].value.median, is[index].decimals),
                              range ? range_text(*range, was[index].decimals, style) : std::string());
    }
    return text;
}

std::string sections_compared(const Sheet& before, const Sheet& after, const ScoreSheet& score_sheet,
                              const TextStyle& style) {
    std::string text;
    for (const Section section : sheet_sections) {
        text += compared_line(title_of(section), points_text(before.at_risk[section].median),
                              points_text(after.at_risk[section].median),
                              "   of " + at_right(shortest(score_sheet.points[section]), 2));
    }
    return text + bold(compared_line("all points at risk", points_text(before.total.median),
                                     points_text(after.total.median),
                                     "   of " + shortest(all_points_of(score_sheet))),
                       style);
}

std::string proposal_text(const Proposal& proposal, std::size_t number, const Mending& mending,
                          const ScoreSheet& score_sheet, const TextStyle& style) {
    const std::size_t setting_columns = columns_of_setting(style);
    const std::size_t title_columns = style.width - 2 * setting_columns;
    const std::string title =
        cut_end(fmt::format("{}  {}", number, proposal_words(proposal, mending)), title_columns, style);
    std::string text = bold(at_left(title, title_columns) + at_right("now", setting_columns) +
                                at_right("then", setting_columns),
                            style) +
                       '\n';
    text += changes_text(proposal.changes, mending.recipe.measures, style) + '\n';
    text += dim(compared_line("", "before", "after", "     style"), style);
    text += numbers_compared(mending.beer, proposal.beer, mending.style, style);
    text += sections_compared(mending.sheet, proposal.sheet, score_sheet, style);
    text += paragraph(shown("Left: " + left_over_words(proposal.sheet) + ".", style), change_indent,
                      change_indent, style);
    if (!proposal.no_longer_measured.empty()) {
        text += paragraph(shown(fmt::format("Measured before, and estimated from here on: {}.",
                                            listed(proposal.no_longer_measured, "and")),
                                style),
                          change_indent, change_indent, style);
    }
    for (const Caution& caution : proposal.cautions) {
        text += paragraph(shown("Caution: " + caution.text, style), change_indent, change_indent, style);
    }
    return text;
}

std::string opening_text(const Mending& mending, const ScoreSheet& score_sheet, const TextStyle& style) {
    return paragraph(shown(mend_opening_words(mending, score_sheet), style), 0, 0, style);
}

std::string elsewhere_text(const Mending& mending, const TextStyle& style) {
    const std::string words = mend_elsewhere_words(mending);
    return words.empty() ? words : paragraph(shown(words, style), 0, 0, style) + '\n';
}

}  // namespace

std::string mend_text(const Mending& mending, const ScoreSheet& score_sheet, const TextStyle& style) {
    std::string text = heading(mending.recipe.name, style_title(mending.style), mending.recipe.file, style);
    if (mending.undeclared > 0.0) {
        text += paragraph(shown(undeclared_words(mending), style), 0, 0, style);
    }
    if (!mending.is_in_already()) {
        text += opening_text(mending, score_sheet, style) + '\n';
    }
    for (std::size_t index = 0; index < mending.proposals.size(); ++index) {
        text += proposal_text(mending.proposals[index], index + 1, mending, score_sheet, style) + '\n';
    }
    return text + elsewhere_text(mending, style) +
           paragraph(shown(mend_summary_words(mending, score_sheet), style), 0, 0, style);
}

}  // namespace entrywise

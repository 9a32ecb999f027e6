#include "report/mend_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <variant>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/beer_numbers.hpp"
#include "report/finding_title.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t indent = 3;
constexpr std::size_t before_columns = 10;
constexpr std::size_t most_left_over = 3;

/// The columns that a setting takes, before and after a change.
std::size_t columns_of_setting(const TextStyle& style) {
    return style.width < 76 ? 13 : 16;
}

std::string style_title(const Style& style) {
    return fmt::format("{} {}", style.variant_of.empty() ? style.code : style.variant_of, style.name);
}

double all_points_of(const ScoreSheet& score_sheet) {
    double points = 0.0;
    for (const Section section : sheet_sections) {
        points += score_sheet.points[section];
    }
    return points;
}

std::string amount(double number, const std::string& unit) {
    constexpr int decimals = 2;
    return shortest(rounded(number, decimals)) + (unit.empty() ? "" : " " + unit);
}

bool is_mass(const Change& change) {
    return change.unit == "g" || change.unit == "kg";
}

/// A setting as the table prints it; none of an ingredient is told in a word.
std::string setting_text(const Change& change, const Change::Value& value, const char* nothing) {
    if (const double* number = std::get_if<double>(&value)) {
        return *number == 0.0 && is_mass(change) ? nothing : amount(*number, change.unit);
    }
    return std::get<std::string>(value);
}

std::string changes_text(const std::vector<Change>& changes, const TextStyle& style) {
    const std::size_t setting_columns = columns_of_setting(style);
    const std::size_t what_columns = style.width - indent - 2 * setting_columns;
    std::string text;
    for (const Change& change : changes) {
        const std::string what = cut_end(shown(change.what, style), what_columns - 1, style);
        const std::string from =
            cut_end(shown(setting_text(change, change.from, "none"), style), setting_columns - 1, style);
        const std::string to =
            cut_end(shown(setting_text(change, change.to, "left out"), style), setting_columns - 1, style);
        text += std::string(indent, ' ') + at_left(what, what_columns) + at_right(from, setting_columns) +
                bold(at_right(to, setting_columns), style) + '\n';
    }
    return text;
}

std::string compared_line(std::string_view name, const std::string& before, const std::string& after,
                          const std::string& asked) {
    return without_blanks_at_end(std::string(indent, ' ') + at_left(name, 20) +
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

std::string left_over(const Sheet& sheet) {
    std::vector<std::string> findings;
    for (const Finding& finding : sheet.findings) {
        if (findings.size() < most_left_over) {
            findings.push_back(in_a_sentence(finding));
        }
    }
    return findings.empty() ? std::string("nothing that a judge would likely note") : joined(findings, "; ");
}

std::string count_in_words(std::size_t changes) {
    constexpr std::array<const char*, 5> words{"No change", "One change", "Two changes", "Three changes",
                                               "Four changes"};
    return words[std::min(changes, words.size() - 1)];
}

std::string proposal_title(const Proposal& proposal, const Mending& mending) {
    if (mending.stage == Stage::brewed) {
        return count_in_words(proposal.changes.size()) + " to the finished beer";
    }
    return count_in_words(proposal.changes.size()) +
           (proposal.brings_in_new ? ", with a new ingredient" : " to what the recipe has");
}

std::string proposal_text(const Proposal& proposal, std::size_t number, const Mending& mending,
                          const ScoreSheet& score_sheet, const TextStyle& style) {
    const std::size_t setting_columns = columns_of_setting(style);
    const std::size_t title_columns = style.width - 2 * setting_columns;
    const std::string title =
        cut_end(fmt::format("{}  {}", number, proposal_title(proposal, mending)), title_columns, style);
    std::string text = bold(at_left(title, title_columns) + at_right("now", setting_columns) +
                                at_right("then", setting_columns),
                            style) +
                       '\n';
    text += changes_text(proposal.changes, style) + '\n';
    text += dim(compared_line("", "before", "after", "     style"), style);
    text += numbers_compared(mending.beer, proposal.beer, mending.style, style);
    text += sections_compared(mending.sheet, proposal.sheet, score_sheet, style);
    text += paragraph(shown("Left: " + left_over(proposal.sheet) + ".", style), indent, indent, style);
    if (!proposal.no_longer_measured.empty()) {
        text += paragraph(shown(fmt::format("Measured before, and estimated from here on: {}.",
                                            listed(proposal.no_longer_measured, "and")),
                                style),
                          indent, indent, style);
    }
    for (const Caution& caution : proposal.cautions) {
        text += paragraph(shown("Caution: " + caution.text, style), indent, indent, style);
    }
    return text;
}

std::string undeclared_text(const Mending& mending) {
    return fmt::format(
        "The entry form must say more than `declares` does: {} points besides, which no change to "
        "the beer mends.",
        points_text(mending.undeclared));
}

std::string opening_text(const Mending& mending, const ScoreSheet& score_sheet, const TextStyle& style) {
    const PointsAtRisk& total = mending.sheet.total;
    std::string text =
        fmt::format("{} of {} points at risk as it stands ({}{}{}): {}.", points_text(total.median),
                    shortest(all_points_of(score_sheet)), points_text(total.low), dash(style),
                    points_text(total.high), left_over(mending.sheet));
    if (!mending.proposals.empty() && mending.target != mending.wanted) {
        text += fmt::format(" No four changes bring that down to {}; these bring it at least to half, {}.",
                            shortest(mending.wanted), points_text(mending.target));
    }
    return paragraph(shown(text, style), 0, 0, style);
}

std::string nothing_holds(const Mending& mending) {
    const std::string target = shortest(mending.target);
    if (mending.stage == Stage::brewed) {
        return fmt::format(
            "{} as {}: nothing that a finished beer allows brings it to {} points at risk. What "
            "is left to mend was made in the brewhouse: --stage recipe tells of the next brew.",
            mending.recipe.name, style_title(mending.style), target);
    }
    return fmt::format(
        "{} as {}: no four changes that are known here bring it to {} points at risk. It may "
        "be another style's beer.",
        mending.recipe.name, style_title(mending.style), target);
}

std::string change_in_a_sentence(const Change& change) {
    const std::string to = setting_text(change, change.to, "left out");
    const double* from = std::get_if<double>(&change.from);
    const bool plain = to == "left out" || (from != nullptr && *from == 0.0);
    return fmt::format("{} {}{}", change.what, plain ? "" : "to ", to);
}

/// What matters most, to stand last, beside the prompt.
std::string summary_text(const Mending& mending, const ScoreSheet& score_sheet) {
    if (mending.is_in_already()) {
        return fmt::format("{} as {}: {} of {} points at risk, within the {} asked for. Nothing to mend.",
                           mending.recipe.name, style_title(mending.style),
                           points_text(mending.sheet.total.median), shortest(all_points_of(score_sheet)),
                           shortest(mending.wanted));
    }
    if (mending.proposals.empty()) {
        return nothing_holds(mending);
    }
    const Proposal& first = mending.proposals.front();
    std::vector<std::string> changes;
    for (const Change& change : first.changes) {
        changes.push_back(change_in_a_sentence(change));
    }
    return fmt::format("{} as {}: {} points at risk instead of {} with the least change: {}.",
                       mending.recipe.name, style_title(mending.style), points_text(first.sheet.total.median),
                       points_text(mending.sheet.total.median), joined(changes, "; "));
}

std::string elsewhere_text(const Mending& mending, const TextStyle& style) {
    std::vector<std::string> places;
    for (const RankedStyle& place : mending.elsewhere) {
        const std::string base = place.base ? ", on " + place.base->code : std::string();
        places.push_back(fmt::format("{} {}{}, with {} points at risk", place.name.code, place.title, base,
                                     points_text(place.at_risk.median)));
    }
    return places.empty()
               ? std::string()
               : paragraph(shown("Or enter it as " + listed(places) + ".", style), 0, 0, style) + '\n';
}

}  // namespace

std::string mend_text(const Mending& mending, const ScoreSheet& score_sheet, const TextStyle& style) {
    std::string text = heading(mending.recipe.name, style_title(mending.style), mending.recipe.file, style);
    if (mending.undeclared > 0.0) {
        text += paragraph(shown(undeclared_text(mending), style), 0, 0, style);
    }
    if (!mending.is_in_already()) {
        text += opening_text(mending, score_sheet, style) + '\n';
    }
    for (std::size_t index = 0; index < mending.proposals.size(); ++index) {
        text += proposal_text(mending.proposals[index], index + 1, mending, score_sheet, style) + '\n';
    }
    return text + elsewhere_text(mending, style) +
           paragraph(shown(summary_text(mending, score_sheet), style), 0, 0, style);
}

}  // namespace entrywise

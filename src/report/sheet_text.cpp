#include "report/sheet_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/capitalized.hpp"
#include "report/gauge.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/sensed.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

constexpr int points_decimals = 1;
constexpr std::size_t title_columns = 19;
constexpr std::size_t points_columns = 11;
/// In front of what stands under a section; what it costs stands there.
constexpr std::size_t margin_columns = 7;

std::string head_line(const TextStyle& style) {
    return bold(at_left("Predicted sheet", title_columns) + at_right("at risk", points_columns) +
                    "    8 in 10",
                style) +
           '\n';
}

std::string line_of(std::string_view name, const PointsAtRisk& at_risk, double points,
                    const TextStyle& style) {
    constexpr std::size_t longest_bar = 20;
    const std::string of_points =
        fmt::format("{} of {}", points_text(at_risk.median), at_right(shortest(points), 2));
    const std::string line =
        at_left(name, title_columns) + at_right(of_points, points_columns) + std::string(gap_columns, ' ') +
        interval_text({at_risk.median, at_risk.low, at_risk.high}, points_decimals, style) +
        std::string(gap_columns, ' ');
    const std::size_t columns = std::min(longest_bar, style.width - character_count(line));
    return bold(line + bar(rounded(at_risk.median, points_decimals), points, columns, style), style) + '\n';
}

/// A text behind the margin, and in it what the text costs or that it is right.
std::string beside_margin(const std::string& in_margin, const std::string& text, const TextStyle& style) {
    std::string lines = paragraph(shown(text, style), margin_columns, margin_columns, style);
    const std::string margin = at_right(in_margin, margin_columns - 1);
    return accented(margin, style) + lines.substr(std::min(margin_columns - 1, lines.size()));
}

std::string met_words(const SensedTrait& trait) {
    const std::string side =
        trait.side.empty()
            ? ""
            : fmt::format(" ({}{} the style)", trait.only_perhaps ? "may be " : "", trait.side);
    return fmt::format("{} {}{}", spoken(word_of(trait.attribute)),
                       word_for(scale_of(trait.attribute), trait.level.median), side);
}

/// What a palate meets in a section, and what it rightly misses.
std::string met_text(const Check& check, Section section, const TextStyle& style) {
    std::vector<std::string> met;
    for (const SensedTrait& trait : sensed_in(check, section)) {
        met.push_back(met_words(trait));
    }
    const std::string absent = rightly_absent(check, section);
    std::string text = met.empty() ? std::string() : capitalized(joined(met, ", ")) + '.';
    if (!absent.empty()) {
        text += fmt::format("{}No {}.", text.empty() ? "" : " ", absent);
    }
    return text.empty() ? text : paragraph(shown(text, style), margin_columns, margin_columns, style);
}

std::string strengths_text(const Check& check, Section section, const TextStyle& style) {
    std::string text;
    for (const AdvisedStrength& strength : check.strengths) {
        if (section_of(strength.strength.attribute) == section) {
            text += beside_margin("+", strength.note, style);
        }
    }
    return text;
}

std::string findings_text(const Check& check, Section section, const TextStyle& style) {
    std::string text;
    for (const AdvisedFinding& advised : check.findings) {
        if (advised.finding.section == section) {
            text += beside_margin(
                '-' + points_text(advised.finding.points),
                fmt::format("{} (noticed {})", advised.note, percent_text(advised.finding.noticed)), style);
        }
    }
    return text;
}

std::string_view reason_of(const Check& check, Section section) {
    if (check.findings.empty()) {
        return "Several small risks, none of which a judge would likely note.";
    }
    return section == Section::overall ? "What is out of style above costs here too."
                                       : "What is out of style in other sections costs here too.";
}

/// Where a section loses points to what is found in others, or to what is too small to be found.
std::string follows_text(const Check& check, Section section, const std::string& findings,
                         const TextStyle& style) {
    const bool loses = rounded(check.sheet.at_risk[section].median, points_decimals) > 0.0;
    if (!findings.empty() || !loses) {
        return {};
    }
    return paragraph(reason_of(check, section), margin_columns, margin_columns, style);
}

std::string section_text(const Check& check, Section section, double points, const TextStyle& style) {
    const std::string findings = findings_text(check, section, style);
    return line_of(capitalized(std::string(title_of(section))), check.sheet.at_risk[section], points, style) +
           met_text(check, section, style) + strengths_text(check, section, style) + findings +
           follows_text(check, section, findings, style);
}

}  // namespace

std::string points_text(double points) {
    return fixed(points, points_decimals);
}

std::string points_interval_text(const PointsAtRisk& at_risk, const TextStyle& style) {
    return points_text(at_risk.low) + std::string(dash(style)) + points_text(at_risk.high);
}

std::string sheet_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style) {
    std::string text = head_line(style);
    for (const Section section : sheet_sections) {
        text += section_text(check, section, score_sheet.points[section], style);
    }
    text += line_of("All", check.sheet.total, all_points_of(score_sheet), style);
    const std::string key =
        "In front of a finding stands what it costs, told once for all the sections it shows in; "
        "+ is what is as it should be.";
    const bool needs_key = !check.findings.empty() || !check.strengths.empty();
    return text + (needs_key ? paragraph(key, 0, 0, style) : std::string());
}

}  // namespace entrywise

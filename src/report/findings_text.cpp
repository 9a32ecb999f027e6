#include "report/findings_text.hpp"

#include "base/text.hpp"
#include "report/capitalized.hpp"
#include "report/finding_title.hpp"
#include "report/number_table.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t points_columns = 8;
constexpr std::size_t noticed_columns = 9;
constexpr std::size_t indent = 2;
constexpr std::size_t hanging_indent = 4;

std::string row(const std::string& title, const std::string& points, const std::string& noticed,
                const TextStyle& style) {
    const std::size_t title_columns = style.width - points_columns - noticed_columns;
    return bold(at_left(cut_end(title, title_columns, style), title_columns), style) +
           accented(at_right(points, points_columns), style) + at_right(noticed, noticed_columns) + '\n';
}

std::string finding_text(const AdvisedFinding& advised, const TextStyle& style) {
    const Finding& finding = advised.finding;
    std::string text = row(capitalized(title_of(finding)), points_text(finding.points),
                           percent_text(finding.noticed), style);
    text += paragraph(shown(advised.note, style), indent, indent, style);
    if (!advised.causes.empty()) {
        text +=
            paragraph(shown("Why: " + joined(advised.causes, "; "), style), indent, hanging_indent, style);
    }
    if (!advised.corrections.empty()) {
        text += paragraph(shown("To bring it in: " + joined(advised.corrections, "; or "), style), indent,
                          hanging_indent, style);
    }
    return text;
}

}  // namespace

std::string strengths_text(const Check& check, const TextStyle& style) {
    if (check.strengths.empty()) {
        return {};
    }
    std::string text = bold("In style", style) + '\n';
    for (const AdvisedStrength& strength : check.strengths) {
        text += paragraph(shown(strength.note, style), indent, hanging_indent, style);
    }
    return text;
}

std::string findings_text(const Check& check, const TextStyle& style) {
    if (check.findings.empty()) {
        return {};
    }
    const std::size_t title_columns = style.width - points_columns - noticed_columns;
    std::string text = bold(at_left("Findings, dearest first", title_columns) +
                                at_right("points", points_columns) + at_right("noticed", noticed_columns),
                            style) +
                       '\n';
    for (const AdvisedFinding& finding : check.findings) {
        text += finding_text(finding, style);
    }
    return text;
}

}  // namespace entrywise

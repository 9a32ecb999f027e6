#include "report/corrections_text.hpp"

#include <fmt/format.h>

#include "base/text.hpp"
#include "report/capitalized.hpp"
#include "report/finding_title.hpp"

namespace entrywise {

namespace {

constexpr std::size_t correction_indent = 4;

std::string correction_text(const AdvisedFinding& advised, std::size_t number, const TextStyle& style) {
    const std::string title = fmt::format("{}{}", at_right(std::to_string(number), 2), "  ") +
                              shown(capitalized(in_a_sentence(advised.finding)), style);
    std::string text = bold(cut_end(title, style.width, style), style) + '\n';
    if (!advised.corrections.empty()) {
        text += paragraph(shown(capitalized(joined(advised.corrections, "; or ")) + '.', style),
                          correction_indent, correction_indent, style);
    }
    if (!advised.causes.empty()) {
        text += paragraph(shown("It comes from: " + joined(advised.causes, "; ") + '.', style),
                          correction_indent, correction_indent, style);
    }
    return text;
}

}  // namespace

std::string corrections_text(const Check& check, const TextStyle& style) {
    if (check.findings.empty()) {
        return {};
    }
    std::string text = bold("What to change, what costs most first", style) + '\n';
    std::size_t number = 0;
    for (const AdvisedFinding& advised : check.findings) {
        text += correction_text(advised, ++number, style);
    }
    return text;
}

}  // namespace entrywise

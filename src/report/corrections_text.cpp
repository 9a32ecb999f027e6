#include "report/corrections_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/text.hpp"
#include "report/capitalized.hpp"
#include "report/finding_title.hpp"

namespace entrywise {

namespace {

constexpr std::size_t correction_indent = 4;

/// A finding, the sections whose findings of the same thing are mended alike, and what else its first change
/// mends.
struct Wish {
    const AdvisedFinding* advised = nullptr;
    std::vector<Section> sections;
    std::vector<std::string> mended_too;
};

bool are_mended_alike(const AdvisedFinding& one, const AdvisedFinding& other) {
    return one.finding.attribute == other.finding.attribute &&
           one.finding.direction == other.finding.direction && one.corrections == other.corrections &&
           one.causes == other.causes;
}

std::vector<Wish> wishes_of(const std::vector<AdvisedFinding>& findings) {
    std::vector<Wish> wishes;
    for (const AdvisedFinding& advised : findings) {
        const auto mended_by = std::find_if(wishes.begin(), wishes.end(), [&advised](const Wish& wish) {
            return id_of(wish.advised->finding) == advised.mended_by;
        });
        if (mended_by != wishes.end()) {
            mended_by->mended_too.push_back(name_of(advised.finding));
            continue;
        }
        const auto alike = std::find_if(wishes.begin(), wishes.end(), [&advised](const Wish& wish) {
            return are_mended_alike(*wish.advised, advised);
        });
        if (alike == wishes.end()) {
            wishes.push_back({&advised, {advised.finding.section}, {}});
        } else {
            alike->sections.push_back(advised.finding.section);
        }
    }
    return wishes;
}

std::string also_mended(const Wish& wish) {
    if (wish.mended_too.empty()) {
        return {};
    }
    const std::string_view which = wish.advised->corrections.size() > 1 ? "The first" : "That";
    return fmt::format(" {} mends {} too.", which, listed(wish.mended_too, "and"));
}

std::string correction_text(const Wish& wish, std::size_t number, const TextStyle& style) {
    const AdvisedFinding& advised = *wish.advised;
    const std::string title = fmt::format("{}{}", at_right(std::to_string(number), 2), "  ") +
                              shown(capitalized(in_a_sentence(advised.finding, wish.sections)), style);
    std::string text = bold(cut_end(title, style.width, style), style) + '\n';
    if (!advised.corrections.empty()) {
        text += paragraph(
            shown(capitalized(joined(advised.corrections, "; or ")) + '.' + also_mended(wish), style),
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
    for (const Wish& wish : wishes_of(check.findings)) {
        text += correction_text(wish, ++number, style);
    }
    return text;
}

}  // namespace entrywise

#include "report/style_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "base/text.hpp"
#include "report/beer_numbers.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

std::string range_or_blank(const Style& described, Number number, int decimals, const TextStyle& style) {
    const auto range = range_of(described.ranges, number);
    return range ? range_text(*range, decimals, style) : std::string(span_columns, ' ');
}

std::string numbers_text(const Style& described, const TextStyle& style) {
    std::string text = bold("Numbers", style) + '\n';
    for (const Number number : guide_numbers()) {
        const NumberWords words = words_for(number);
        const auto range = range_of(described.ranges, number);
        const std::string name =
            words.unit.empty() ? std::string(words.name) : fmt::format("{}, {}", words.name, words.unit);
        text += at_left("  " + name, name_columns + 2 * gap_columns) +
                (range ? without_blanks_at_end(range_text(*range, words.decimals, style)) : "  not given") +
                '\n';
    }
    return text;
}

std::string told_words(Attribute attribute, const Expectation& expectation) {
    return accepted_words(attribute, expectation) + (expectation.assumed ? " (taken for granted)" : "");
}

std::string section_text(const Style& described, Section section, const TextStyle& style) {
    std::string lines;
    for (const Attribute attribute : all_attributes()) {
        const auto& expectation = described.expected[attribute];
        if (section_of(attribute) == section && expectation) {
            lines += at_left("  " + spoken(word_of(attribute)), name_columns + gap_columns) + "  " +
                     told_words(attribute, *expectation) + '\n';
        }
    }
    std::string title(title_of(section));
    title.front() = static_cast<char>(title.front() - 'a' + 'A');
    return lines.empty() ? lines : '\n' + bold(title, style) + '\n' + lines;
}

std::string list_text(std::string_view what, const std::vector<std::string>& items, const TextStyle& style) {
    return items.empty()
               ? std::string()
               : paragraph(shown(fmt::format("{}: {}.", what, joined(items, ", ")), style), 2, 4, style);
}

std::string customary_text(const Style& described, const TextStyle& style) {
    const std::string lines = list_text("Yeast", described.custom.yeast_typical, style) +
                              list_text("Hops", described.custom.hops_typical, style) +
                              list_text("Grist", described.custom.grist_base, style);
    return lines.empty() ? lines : '\n' + bold("Customary", style) + '\n' + lines;
}

std::string declared_text(const Style& described, const TextStyle& style) {
    const std::string lines = list_text("Must be declared", described.must_declare, style) +
                              list_text("May be declared", described.may_declare, style);
    return lines.empty() ? lines : '\n' + bold("Entry", style) + '\n' + lines;
}

constexpr std::array listed_numbers{Number::alcohol, Number::bitterness, Number::color};

/// The columns of a list: what codes need, numbers as in other tables, and names what is left.
struct ListColumns {
    std::size_t code;
    std::size_t name;
};

ListColumns list_columns(const std::vector<Style>& styles, const TextStyle& style) {
    constexpr std::size_t longest_code = 18;
    std::size_t code = 0;
    for (const Style& described : styles) {
        code = std::max(code, character_count(described.code));
    }
    code = std::min(code, longest_code) + gap_columns;
    return {code, style.width - code - listed_numbers.size() * (span_columns + 1)};
}

std::string list_head(const std::string& guide, const ListColumns& columns, const TextStyle& style) {
    const std::size_t most = columns.code + columns.name;
    std::string line = at_left(cut_end(shown(guide, style), most - 1, style), most);
    for (const Number number : listed_numbers) {
        line += ' ' + at_left("   " + std::string(words_for(number).unit), span_columns);
    }
    return bold(without_blanks_at_end(line), style) + '\n' + rule(style);
}

std::string list_line(const Style& described, const ListColumns& columns, const TextStyle& style) {
    const auto cell = [&](const std::string& text, std::size_t width) {
        return at_left(cut_end(shown(text, style), width - 1, style), width);
    };
    std::string line = cell(described.code, columns.code) + cell(described.name, columns.name);
    for (const Number number : listed_numbers) {
        line += ' ' + range_or_blank(described, number, words_for(number).decimals, style);
    }
    return without_blanks_at_end(line) + '\n';
}

}  // namespace

std::string style_list_text(const std::vector<Style>& styles, const TextStyle& style) {
    const ListColumns columns = list_columns(styles, style);
    std::string text;
    std::string guide;
    for (const Style& described : styles) {
        if (described.guide != guide) {
            text += (guide.empty() ? "" : "\n") + list_head(described.guide, columns, style);
            guide = described.guide;
        }
        text += list_line(described, columns, style);
    }
    return text + fmt::format("{} {}\n", styles.size(), styles.size() == 1 ? "style" : "styles");
}

std::string style_text(const Style& shown_style, const TextStyle& style) {
    std::string text = heading(fmt::format("{} {}", shown_style.code, shown_style.name), shown_style.guide,
                               shown_style.category, style);
    text += numbers_text(shown_style, style);
    for (const Section section : sheet_sections) {
        text += section_text(shown_style, section, style);
    }
    return text + declared_text(shown_style, style) + customary_text(shown_style, style);
}

}  // namespace entrywise

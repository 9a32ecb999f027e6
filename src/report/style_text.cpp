#include "report/style_text.hpp"

#include <fmt/format.h>

#include "base/text.hpp"
#include "quantity/printed_precision.hpp"
#include "report/beer_numbers.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

struct NumberWords {
    Number number;
    std::string_view name;
    int decimals;
};

constexpr NumberWords number_words[] = {
    {Number::original_gravity, "original gravity", specific_gravity_decimals},
    {Number::final_gravity, "final gravity", specific_gravity_decimals},
    {Number::alcohol, "alcohol, % vol", alcohol_decimals},
    {Number::bitterness, "bitterness, IBU", bitterness_decimals},
    {Number::color, "color, SRM", color_decimals},
};

std::string range_or_blank(const Style& described, Number number, int decimals, const TextStyle& style) {
    const auto range = range_of(described.ranges, number);
    return range ? range_text(*range, decimals, style) : std::string(span_columns, ' ');
}

std::string numbers_text(const Style& described, const TextStyle& style) {
    std::string text = bold("Numbers", style) + '\n';
    for (const NumberWords& words : number_words) {
        const auto range = range_of(described.ranges, words.number);
        text += at_left("  " + std::string(words.name), name_columns + 2 * gap_columns) +
                (range ? without_blanks_at_end(range_text(*range, words.decimals, style)) : "  not given") +
                '\n';
    }
    return text;
}

std::string accepted_words(Attribute attribute, const Expectation& expectation) {
    const SensoryScale scale = scale_of(attribute);
    const std::string_view low = word_for(scale, expectation.low);
    const std::string_view high = word_for(scale, expectation.high);
    const std::string words = low == high ? std::string(low) : fmt::format("{} to {}", low, high);
    return expectation.assumed ? words + " (taken for granted)" : words;
}

std::string section_text(const Style& described, Section section, const TextStyle& style) {
    std::string lines;
    for (const Attribute attribute : all_attributes()) {
        const auto& expectation = described.expected[attribute];
        if (section_of(attribute) == section && expectation) {
            lines += at_left("  " + spoken(word_of(attribute)), name_columns + gap_columns) + "  " +
                     accepted_words(attribute, *expectation) + '\n';
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

std::string list_line(const Style& described, const TextStyle& style) {
    constexpr std::size_t code_columns = 14;
    const std::size_t numbers = 3 * (span_columns + 1);
    const std::size_t most = style.width - code_columns - numbers;
    const std::string code = cut_end(shown(described.code, style), code_columns - 1, style);
    std::string line =
        at_left(code, code_columns) + at_left(cut_end(shown(described.name, style), most - 1, style), most);
    for (const Number number : {Number::alcohol, Number::bitterness, Number::color}) {
        line += range_or_blank(described, number, alcohol_decimals, style) + ' ';
    }
    return without_blanks_at_end(line) + '\n';
}

}  // namespace

std::string style_list_text(const std::vector<Style>& styles, const TextStyle& style) {
    std::string text;
    std::string guide;
    for (const Style& described : styles) {
        if (described.guide != guide) {
            text += (guide.empty() ? "" : "\n") +
                    heading(described.guide, "alcohol in % vol, bitterness in IBU, color in SRM", "", style);
            guide = described.guide;
        }
        text += list_line(described, style);
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

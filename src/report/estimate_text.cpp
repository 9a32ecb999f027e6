#include "report/estimate_text.hpp"

#include <fmt/format.h>

#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/color.hpp"
#include "report/assumed_text.hpp"
#include "report/beer_numbers.hpp"
#include "report/gauge.hpp"
#include "report/heading.hpp"
#include "report/measured.hpp"
#include "report/number_table.hpp"
#include "report/page_sources.hpp"

namespace entrywise {

namespace {

std::string number_line(std::string_view name, const Interval80<double>& value, int decimals,
                        std::string_view unit, const TextStyle& style) {
    return without_blanks_at_end(table_line(name, fixed(value.median, decimals),
                                            interval_text(value, decimals, style), shown(unit, style))) +
           '\n';
}

std::string ebc_line(const Interval80<double>& color, const TextStyle& style) {
    const Interval80<double> value{in_ebc(color.median * srm), in_ebc(color.low * srm),
                                   in_ebc(color.high * srm)};
    return number_line("", value, 0, "EBC", style);
}

std::string numbers_text(const Beer& beer, const TextStyle& style) {
    const std::string head = table_line("Numbers", "beer", at_right("8 in 10", 9), "");
    std::string text = bold(without_blanks_at_end(head), style) + '\n';
    for (const BeerNumber& number : numbers_of(beer)) {
        if (number.key == "apparent_attenuation") {
            text += number_line("attenuation", number.value, number.decimals, "%, apparent", style);
            continue;
        }
        const std::string_view unit = number.unit == "SG" ? std::string_view() : number.unit;
        text += number_line(number.name, number.value, number.decimals, unit, style);
        if (number.key == "color") {
            text += ebc_line(number.value, style);
        }
    }
    return text;
}

std::string share_line(const SourceShare& source, const TextStyle& style) {
    constexpr std::size_t share_columns = 7;
    constexpr std::size_t bar_columns = 20;
    const std::size_t name = style.width - text_indent - share_columns - gap_columns - bar_columns;
    constexpr std::size_t widest_name = 34;
    const std::size_t columns = name < widest_name ? name : widest_name;
    return std::string(text_indent, ' ') +
           at_left(cut_end(shown(source.ingredient, style), columns, style), columns) +
           at_right(fixed(source.share * 100.0, 0) + " %", share_columns) + std::string(gap_columns, ' ') +
           bar(source.share, 1.0, bar_columns, style) + '\n';
}

std::string sources_text(std::string_view what, const std::vector<SourceShare>& sources,
                         const TextStyle& style) {
    if (sources.empty()) {
        return {};
    }
    std::string text = '\n' + bold(fmt::format("{} comes from", what), style) + '\n';
    for (const SourceShare& source : sources) {
        text += share_line(source, style);
    }
    return text;
}

std::string other_bitterness_text(const Beer& beer, const TextStyle& style) {
    return paragraph(other_bitterness_words(beer), text_indent, text_indent, style);
}

struct Method {
    std::string_view number;
    std::string_view words;
};

/// How each number is worked out where it was not measured; the sources in full stand with the formulas.
constexpr Method methods[] = {
    {"original gravity",
     "a balance of extract mass over the wort's volume; degrees Plato by Lincoln's cubic, 1987"},
    {"final gravity",
     "the fermentable share of each source of extract, times what the yeast makes of it, and what dry hops "
     "make fermentable"},
    {"alcohol", "Balling's balance of extract, 1865"},
    {"bitterness",
     "alpha acids that dissolve and isomerize in boil, stand and chill (kinetics of Malowicki and "
     "Shellhammer, 2005) and "
     "survive to the glass, oxidized acids, dry hops"},
    {"color", "Morey's curve over the color of the grist, 1995"},
    {"carbonation", "as the recipe states it, or the common default"},
    {"real extract", "Balling's balance from original and apparent extract"},
};

std::string methods_text(const TextStyle& style) {
    std::string text = '\n' + bold("How they are worked out", style) + '\n';
    for (const Method& method : methods) {
        text += paragraph(fmt::format("{}: {}.", method.number, method.words), text_indent, 2 * text_indent,
                          style);
    }
    return text;
}

}  // namespace

std::string estimate_text(const Recipe& recipe, const Beer& beer, const TextStyle& style) {
    std::string text = heading(recipe.name, "", recipe.file, style);
    text += numbers_text(beer, style);
    text += measured_text(recipe.measured, style);
    text += sources_text("Extract", beer.original_gravity.sources, style);
    text += sources_text("Bitterness", beer.bitterness.sources, style);
    text += other_bitterness_text(beer, style);
    text += sources_text("Color", beer.color.sources, style);
    text += methods_text(style);
    const std::string assumed = assumed_text(beer, style);
    return text + (assumed.empty() ? "" : '\n' + assumed);
}

}  // namespace entrywise

#include "report/style_comparison_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/declared_text.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

using Words = std::vector<std::string>;

constexpr std::size_t trait_columns = 17;
constexpr std::size_t steps_columns = 6;

/// Columns of each of the two styles.
std::size_t side_columns(const TextStyle& style) {
    return (style.width - text_indent - trait_columns - steps_columns) / 2;
}

/// How the two are called in tables: by their codes, with their guides where these differ or the codes do
/// not.
struct Names {
    std::string first;
    std::string second;
};

Names names_of(const StyleComparison& comparison) {
    const Style& first = comparison.first;
    const Style& second = comparison.second;
    if (first.code != second.code) {
        return {first.code, second.code};
    }
    return {first.guide + '/' + first.code, second.guide + '/' + second.code};
}

/// A line of the table; what is too long for its side goes on below.
std::string row(const std::string& title, const std::string& first, const std::string& second,
                const std::string& steps, const TextStyle& style) {
    const std::size_t side = side_columns(style);
    const Words left = wrapped(first, side - 1);
    const Words right = wrapped(second, side - 1);
    std::string text;
    for (std::size_t line = 0; line < std::max({left.size(), right.size(), std::size_t{1}}); ++line) {
        const auto part = [line](const Words& lines) {
            return line < lines.size() ? lines[line] : std::string();
        };
        text += without_blanks_at_end(std::string(text_indent, ' ') +
                                      at_left(line == 0 ? title : "", trait_columns) +
                                      at_left(part(left), side) + at_left(part(right), side) +
                                      at_right(line == 0 ? steps : "", steps_columns)) +
                '\n';
    }
    return text;
}

std::string head_of_table(const std::string& title, const Names& names, std::string_view last,
                          const TextStyle& style) {
    const std::size_t side = side_columns(style);
    const auto code = [&](const std::string& name) {
        return at_left(cut_end(shown(name, style), side - 1, style), side);
    };
    return bold(without_blanks_at_end(at_left(title, text_indent + trait_columns) + code(names.first) +
                                      code(names.second) + at_right(last, steps_columns)),
                style) +
           '\n';
}

std::string accepted_by(const Style& described, const Trait& trait, const TextStyle& style) {
    if (const auto* number = std::get_if<Number>(&trait)) {
        const auto range = range_of(described.ranges, *number);
        return range ? range_words(*number, *range, style) : "not given";
    }
    const auto attribute = std::get<Attribute>(trait);
    const auto& expectation = described.expected[attribute];
    return expectation ? accepted_words(attribute, *expectation) : "not described";
}

bool is_number(const Contrast& contrast) {
    return std::holds_alternative<Number>(contrast.trait);
}

bool is_told(const std::vector<Contrast>& contrasts, const Trait& trait) {
    return std::any_of(contrasts.begin(), contrasts.end(),
                       [&](const Contrast& contrast) { return contrast.trait == trait; });
}

std::string row(const StyleComparison& comparison, const Contrast& contrast, const TextStyle& style) {
    return row(title_of(contrast.trait), accepted_by(comparison.first, contrast.trait, style),
               accepted_by(comparison.second, contrast.trait, style), fixed(contrast.steps, 1), style);
}

std::string separating_text(const StyleComparison& comparison, const Names& names, const TextStyle& style) {
    if (comparison.apart.empty()) {
        return bold("Nothing separates them for sure", style) + '\n';
    }
    std::string text = head_of_table("What separates", names, "steps", style);
    for (const Contrast& contrast : comparison.apart) {
        text += row(comparison, contrast, style);
    }
    return text;
}

/// The part of a number that both accept.
std::string shared_words(const StyleComparison& comparison, Number number, const TextStyle& style) {
    const auto first = range_of(comparison.first.ranges, number);
    const auto second = range_of(comparison.second.ranges, number);
    if (!first || !second) {
        return {};
    }
    PlainRange shared;
    shared.low = first->low && second->low ? std::max(*first->low, *second->low)
                                           : (first->low ? first->low : second->low);
    shared.high = first->high && second->high ? std::min(*first->high, *second->high)
                                              : (first->high ? first->high : second->high);
    shared.below_high = (first->below_high && first->high == shared.high) ||
                        (second->below_high && second->high == shared.high);
    const bool is_empty = shared.low && shared.high &&
                          (*shared.low > *shared.high || (shared.below_high && *shared.low == *shared.high));
    return is_empty ? "none" : range_text(shared, words_for(number).decimals, style);
}

/// The columns of the table of numbers; on a narrow page the share of all has no room.
struct NumberColumns {
    std::size_t side = 0;
    bool has_share = true;
};

NumberColumns number_columns(const TextStyle& style) {
    constexpr std::size_t ranges = 3;
    const std::size_t all = style.width - text_indent - trait_columns;
    const std::size_t beside_share = (all - steps_columns - 1) / ranges;
    return beside_share > span_columns ? NumberColumns{beside_share, true}
                                       : NumberColumns{all / ranges, false};
}

std::string numbers_head(const Names& names, const NumberColumns& columns, const TextStyle& style) {
    const auto code = [&](const std::string& name) {
        constexpr std::size_t over_the_dash = 3;
        const std::string text = cut_end(shown(name, style), columns.side - 1, style);
        const std::size_t before = character_count(text) < span_columns / 2 ? over_the_dash : 0;
        return at_left(std::string(before, ' ') + text, columns.side);
    };
    const std::string line = at_left("Numbers", text_indent + trait_columns) + code(names.first) +
                             code(names.second) + at_left("  in both", columns.side) +
                             (columns.has_share ? at_right("of all", steps_columns) : "");
    return bold(without_blanks_at_end(line), style) + '\n';
}

/// What both accept of all that either does, in percent; empty where one of the two has no range.
std::string share_of_all(const StyleComparison& comparison, Number number) {
    const auto contrast = std::find_if(comparison.contrasts.begin(), comparison.contrasts.end(),
                                       [&](const Contrast& each) { return each.trait == Trait(number); });
    return contrast == comparison.contrasts.end() ? std::string()
                                                  : fixed(100.0 * contrast->overlap, 0) + " %";
}

std::string number_line(const StyleComparison& comparison, Number number, const NumberColumns& columns,
                        const TextStyle& style) {
    const NumberWords words = words_for(number);
    const auto cell = [&](const Style& described) {
        const auto range = range_of(described.ranges, number);
        return at_left(range ? range_text(*range, words.decimals, style) : " not given", columns.side);
    };
    const std::string name =
        words.unit.empty() ? std::string(words.name) : fmt::format("{}, {}", words.name, words.unit);
    const std::string shared = shared_words(comparison, number, style);
    return without_blanks_at_end(
               std::string(text_indent, ' ') + at_left(name, trait_columns) + cell(comparison.first) +
               cell(comparison.second) + at_left(shared == "none" ? "    none" : shared, columns.side) +
               (columns.has_share ? at_right(share_of_all(comparison, number), steps_columns) : "")) +
           '\n';
}

std::string numbers_text(const StyleComparison& comparison, const Names& names, const TextStyle& style) {
    const NumberColumns columns = number_columns(style);
    std::string lines;
    for (const Number number : guide_numbers()) {
        if (range_of(comparison.first.ranges, number) || range_of(comparison.second.ranges, number)) {
            lines += number_line(comparison, number, columns, style);
        }
    }
    return lines.empty() ? lines : '\n' + numbers_head(names, columns, style) + lines;
}

bool differs(const StyleComparison& comparison, const Contrast& contrast) {
    return contrast.steps > 0.0 && !is_number(contrast) && !is_told(comparison.apart, contrast.trait);
}

std::string differing_text(const StyleComparison& comparison, const Names& names, const TextStyle& style) {
    std::string lines;
    for (const Contrast& contrast : comparison.contrasts) {
        if (differs(comparison, contrast)) {
            lines += row(comparison, contrast, style);
        }
    }
    const std::string title = comparison.apart.empty() ? "Differing in part" : "Differing as well";
    return lines.empty() ? lines : '\n' + head_of_table(title, names, "steps", style) + lines;
}

std::string described_alone(const Style& described, const std::vector<Attribute>& alone) {
    // Beside a style that leaves nearly all to a declared base this would be the whole other style.
    constexpr std::size_t most = 12;
    if (alone.size() > most) {
        return fmt::format("{} levels; entrywise styles show {} tells them", alone.size(), described.code);
    }
    Words words;
    for (const Attribute attribute : alone) {
        words.push_back(fmt::format("{} {}", title_of(Trait(attribute)),
                                    accepted_words(attribute, *described.expected[attribute])));
    }
    return joined(words, "; ");
}

/// What stands on one side only, a paragraph for each side that has any: `21A alone: ...`.
std::string sides_text(const std::string& title, const Names& names, const std::string& first,
                       const std::string& second, const TextStyle& style) {
    std::string text;
    for (const auto& [name, words] : {std::pair(names.first, first), std::pair(names.second, second)}) {
        if (!words.empty()) {
            text += paragraph(shown(fmt::format("{}, {} alone: {}", title, name, words), style), text_indent,
                              2 * text_indent, style);
        }
    }
    return text;
}

std::string lists_text(const std::string& title, const Names& names, const Words& first, const Words& second,
                       const TextStyle& style, const Kin& kin = {}) {
    const WordsApart apart = words_apart(first, second, kin);
    return sides_text(title, names, plain_words(apart.first_alone), plain_words(apart.second_alone), style);
}

std::string titled(std::string_view title, const std::string& lines, const TextStyle& style) {
    return lines.empty() ? lines : '\n' + bold(title, style) + '\n' + lines;
}

std::string kinds_text(const StyleComparison& comparison, const Names& names, const Kin& kin,
                       const TextStyle& style) {
    const Style& first = comparison.first;
    const Style& second = comparison.second;
    return lists_text("Hops", names, first.hop_notes, second.hop_notes, style, kin) +
           lists_text("Malt", names, first.malt_notes, second.malt_notes, style, kin) +
           lists_text("Esters", names, first.ester_notes, second.ester_notes, style, kin) +
           lists_text("Phenols", names, first.phenol_notes, second.phenol_notes, style, kin);
}

/// What is customary in one style, without what is at least possible in the other one.
std::string custom_text(std::string_view title, const Names& names, const Words& first,
                        const Words& first_possible, const Words& second, const Words& second_possible,
                        const TextStyle& style) {
    const auto alone = [](const Words& typical, const Words& other, const Words& other_possible) {
        Words words;
        for (const std::string& word : words_apart(typical, other).first_alone) {
            const bool is_possible =
                std::find(other_possible.begin(), other_possible.end(), word) != other_possible.end();
            words.push_back(is_possible ? word + " (possible in the other)" : word);
        }
        return joined(words, ", ");
    };
    return sides_text(std::string(title), names, alone(first, second, second_possible),
                      alone(second, first, first_possible), style);
}

Words grist_of(const Custom& custom) {
    Words words = custom.grist_base;
    words.insert(words.end(), custom.grist_typical.begin(), custom.grist_typical.end());
    return words;
}

std::string carbonation_words(const Custom& custom, const TextStyle& style) {
    return custom.carbonation ? fmt::format("{}{}{} vol", shortest(custom.carbonation->low.value()),
                                            dash(style), shortest(custom.carbonation->high.value()))
                              : "not given";
}

/// A custom of one word each, told only where it differs.
std::string either_text(std::string_view title, const Names& names, const std::string& first,
                        const std::string& second, const TextStyle& style) {
    if (first == second || first.empty() || second.empty()) {
        return {};
    }
    return paragraph(
        shown(fmt::format("{}: {} {}, {} {}", title, names.first, first, names.second, second), style),
        text_indent, 2 * text_indent, style);
}

std::string customs_text(const StyleComparison& comparison, const Names& names, const TextStyle& style) {
    const Custom& first = comparison.first.custom;
    const Custom& second = comparison.second.custom;
    return either_text("Fermentation", names, comparison.first.fermentation, comparison.second.fermentation,
                       style) +
           custom_text("Yeast", names, first.yeast_typical, first.yeast_possible, second.yeast_typical,
                       second.yeast_possible, style) +
           custom_text("Hops", names, first.hops_typical, first.hops_possible, second.hops_typical,
                       second.hops_possible, style) +
           custom_text("Grist", names, grist_of(first), first.grist_possible, grist_of(second),
                       second.grist_possible, style) +
           either_text("Dry hop", names, first.dry_hop, second.dry_hop, style) +
           either_text("Carbonation", names, carbonation_words(first, style),
                       carbonation_words(second, style), style);
}

std::string declared_text(const StyleComparison& comparison, const Names& names,
                          const std::vector<Declaration>& known, const TextStyle& style) {
    const Style& first = comparison.first;
    const Style& second = comparison.second;
    const auto said = [&](const Style& described, const Style& other) {
        return declared_words_of(words_apart(described.must_declare, other.must_declare).first_alone,
                                 described, known);
    };
    const auto may = [&](const Style& described, const Style& other) {
        return declared_words_of(words_apart(described.may_declare, other.may_declare).first_alone, described,
                                 known);
    };
    return sides_text("Must say", names, said(first, second), said(second, first), style) +
           sides_text("May say", names, may(first, second), may(second, first), style);
}

bool is_same(const StyleComparison& comparison, Attribute attribute) {
    return std::any_of(comparison.contrasts.begin(), comparison.contrasts.end(),
                       [&](const Contrast& contrast) {
                           return contrast.trait == Trait(attribute) && contrast.steps <= 0.0;
                       });
}

/// What the two share, a word that is the same in aroma and flavor once.
std::string same_text(const StyleComparison& comparison, const TextStyle& style) {
    Words in_aroma_and_flavor;
    Words others;
    for (const Attribute attribute : all_attributes()) {
        if (!is_same(comparison, attribute)) {
            continue;
        }
        const Section section = section_of(attribute);
        const auto twin = section == Section::aroma ? attribute_named(Section::flavor, word_of(attribute))
                                                    : attribute_named(Section::aroma, word_of(attribute));
        const bool is_twofold =
            (section == Section::aroma || section == Section::flavor) && twin && is_same(comparison, *twin);
        if (!is_twofold) {
            others.push_back(title_of(Trait(attribute)));
        } else if (section == Section::aroma) {
            in_aroma_and_flavor.push_back(spoken(word_of(attribute)));
        }
    }
    const std::string twofold =
        in_aroma_and_flavor.empty() ? "" : joined(in_aroma_and_flavor, ", ") + " in aroma and flavor";
    const std::string all = twofold + (twofold.empty() || others.empty() ? "" : "; ") + joined(others, ", ");
    return all.empty() ? all : '\n' + paragraph("The same: " + all + ".", 0, text_indent, style);
}

std::string last_line(const StyleComparison& comparison, const TextStyle& style) {
    constexpr std::size_t most_named = 3;
    std::vector<Contrast> exclusive_ones = exclusive(comparison);
    std::stable_sort(exclusive_ones.begin(), exclusive_ones.end(),
                     [](const Contrast& left, const Contrast& right) { return left.steps > right.steps; });
    Words words;
    for (const Contrast& contrast : exclusive_ones) {
        if (words.size() < most_named) {
            words.push_back(title_of(contrast.trait));
        }
    }
    const bool more = exclusive_ones.size() > words.size();
    const std::string text =
        comparison.contrasts.empty() ? "They lay down nothing in common, so that nothing can be compared."
        : comparison.apart.empty()   ? "A beer can be in both: nothing separates them for sure."
        : words.empty()
            ? "A beer can be in both: what separates them overlaps a little."
            : fmt::format("No beer is wholly in both: {}{} {} no place in common.",
                          more ? joined(words, ", ") : listed(words, "and"),
                          more ? fmt::format(" and {} more", exclusive_ones.size() - words.size()) : "",
                          exclusive_ones.size() == 1 ? "has" : "have");
    return '\n' + paragraph(text, 0, text_indent, style);
}

std::string varying_text(const StyleComparison& comparison, const TextStyle& style) {
    std::string text;
    for (const Style* described : {&comparison.first, &comparison.second}) {
        if (described->varies) {
            text += paragraph(
                shown(fmt::format("{} varies with what is declared; compared is what it lays down itself.",
                                  described->code),
                      style),
                0, text_indent, style);
        }
    }
    return text;
}

std::string head(const Style& described, const TextStyle& style) {
    const std::string guide = shown(described.guide, style);
    const std::size_t columns = style.width - character_count(guide) - text_indent;
    const std::string name = shown(fmt::format("{} {}", described.code, described.name), style);
    return bold(at_left(cut_end(name, columns, style), columns + text_indent) + guide, style) + '\n';
}

}  // namespace

std::string style_comparison_text(const StyleComparison& comparison, const PhraseBook& phrases,
                                  const TextStyle& style) {
    const Names names = names_of(comparison);
    std::string text = head(comparison.first, style) + head(comparison.second, style) + rule(style);
    text += varying_text(comparison, style);
    text += separating_text(comparison, names, style);
    text += numbers_text(comparison, names, style);
    text += differing_text(comparison, names, style);
    text += titled("Described in one alone",
                   sides_text("Levels", names, described_alone(comparison.first, comparison.first_alone),
                              described_alone(comparison.second, comparison.second_alone), style),
                   style);
    text += titled("Kinds", kinds_text(comparison, names, phrases.kin, style), style);
    text += titled("Customary, no ground for points", customs_text(comparison, names, style), style);
    text += titled("Entry form", declared_text(comparison, names, phrases.declarations, style), style);
    return text + same_text(comparison, style) + last_line(comparison, style);
}

}  // namespace entrywise

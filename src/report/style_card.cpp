#include "report/style_card.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/color_words.hpp"
#include "report/declared_text.hpp"
#include "report/heading.hpp"
#include "report/sections.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

using Words = std::vector<std::string>;

constexpr std::size_t card_title_columns = 14;
constexpr std::size_t scale_columns = 8;
constexpr std::size_t text_column = text_indent + card_title_columns + scale_columns + 4;

/// A label and what belongs to it, broken into lines that stand under each other.
std::string labeled(std::string_view label, const std::string& text, std::size_t column,
                    const TextStyle& style) {
    if (text.empty()) {
        return {};
    }
    std::string lines = paragraph(shown(text, style), column, column, style);
    return lines.replace(0, column, at_left(label, column));
}

/// The words of a scale as cells, those accepted filled.
std::string cells(Attribute attribute, const Expectation& expectation, const TextStyle& style) {
    const std::size_t count = words_of(scale_of(attribute)).size();
    std::string drawn;
    for (std::size_t cell = 0; cell < count; ++cell) {
        const auto level = static_cast<double>(cell);
        const bool is_accepted = level >= expectation.low && level <= expectation.high;
        drawn += is_accepted ? (style.ascii ? "#" : "■") : (style.ascii ? "." : "·");
    }
    return at_left(drawn, scale_columns);
}

bool is_level(Attribute attribute) {
    return scale_of(attribute) == SensoryScale::intensity;
}

/// Whether a judge must find some of it; on scales other than intensity every style has some place.
bool must_show(Attribute attribute, const Expectation& expectation) {
    return !is_level(attribute) || expectation.low > 0.0;
}

bool may_not_show(Attribute attribute, const Expectation& expectation) {
    return is_level(attribute) && expectation.high <= 0.0;
}

/// The attributes of a section that the style lays down, and for which a condition holds.
template <class Condition>
std::vector<Attribute> those_of(const Style& described, Section section, Condition condition) {
    std::vector<Attribute> found;
    for (const Attribute attribute : all_attributes()) {
        const auto& expectation = described.expected[attribute];
        if (section_of(attribute) == section && expectation && condition(attribute, *expectation)) {
            found.push_back(attribute);
        }
    }
    return found;
}

/// What the grain, the hops or the yeast smell and taste of, beside the attribute that tells how much.
const Words& kinds_of(Attribute attribute, const Style& described) {
    static const Words none;
    switch (attribute) {
        case Attribute::aroma_malt:
            return described.malt_notes;
        case Attribute::aroma_hop:
            return described.hop_notes;
        case Attribute::aroma_ester:
            return described.ester_notes;
        case Attribute::aroma_phenol:
            return described.phenol_notes;
        default:
            return none;
    }
}

/// How far forward it stands; what is no intensity comes last.
double prominence(Attribute attribute, const Style& described) {
    const Expectation& expectation = *described.expected[attribute];
    return is_level(attribute) ? expectation.low + expectation.high : -1.0;
}

std::string row(Attribute attribute, const Style& described, const TextStyle& style) {
    const Expectation& expectation = *described.expected[attribute];
    const std::string label = std::string(text_indent, ' ') +
                              at_left(spoken(word_of(attribute)), card_title_columns + 1) +
                              cells(attribute, expectation, style) + "   ";
    const Words& kinds = kinds_of(attribute, described);
    const std::string words = accepted_words(attribute, expectation);
    return labeled(label, kinds.empty() ? words : fmt::format("{}: {}", words, joined(kinds, ", ")),
                   text_column, style);
}

/// What must be there. Where much is smelled or tasted the strongest comes first, and the places on the other
/// scales last; what is seen and felt comes in the order of the sheet.
std::string rows(const Style& described, Section section, const TextStyle& style) {
    std::vector<Attribute> shown_ones = those_of(described, section, must_show);
    if (section == Section::aroma || section == Section::flavor) {
        std::stable_sort(shown_ones.begin(), shown_ones.end(), [&](Attribute left, Attribute right) {
            return prominence(left, described) > prominence(right, described);
        });
    }
    std::string text;
    for (const Attribute attribute : shown_ones) {
        text += row(attribute, described, style);
    }
    return text;
}

/// What may be there but need not, with the most of it that is accepted: `ester, alcohol up to low`.
std::string optional_words(const Style& described, Section section) {
    std::map<double, Words, std::greater<>> by_most;
    const auto is_optional = [](Attribute attribute, const Expectation& expectation) {
        return is_level(attribute) && expectation.low <= 0.0 && expectation.high > 0.0;
    };
    for (const Attribute attribute : those_of(described, section, is_optional)) {
        by_most[described.expected[attribute]->high].push_back(spoken(word_of(attribute)));
    }
    Words parts;
    for (const auto& [most, names] : by_most) {
        parts.push_back(
            fmt::format("{} up to {}", joined(names, ", "), word_for(SensoryScale::intensity, most)));
    }
    return joined(parts, "; ");
}

std::string forbidden_words(const Style& described, Section section, bool assumed) {
    Words names;
    for (const Attribute attribute : those_of(described, section, may_not_show)) {
        if (described.expected[attribute]->assumed == assumed) {
            names.push_back(spoken(word_of(attribute)));
        }
    }
    return joined(names, ", ");
}

/// What is not accepted: what the style says itself, then what is taken for granted of any such beer.
std::string not_accepted(const Style& described, Section section) {
    const std::string stated = forbidden_words(described, section, false);
    const std::string assumed = forbidden_words(described, section, true);
    if (stated.empty() || assumed.empty()) {
        return stated + (assumed.empty() ? "" : assumed + " (taken for granted)");
    }
    return fmt::format("{}; and taken for granted {}", stated, assumed);
}

std::string color_row(const Style& described, const TextStyle& style) {
    if (!described.ranges.color) {
        return {};
    }
    const auto range = range_of(described.ranges, Number::color);
    return labeled("  color",
                   fmt::format("{} ({})", color_words(*described.ranges.color),
                               range_words(Number::color, *range, style)),
                   text_column, style);
}

std::string_view step_of(Section section) {
    switch (section) {
        case Section::aroma:
            return "1 Aroma, at once, again when it has warmed";
        case Section::appearance:
            return "2 Appearance";
        case Section::flavor:
            return "3 Flavor, from the first sip to the finish";
        case Section::mouthfeel:
            return "4 Mouthfeel";
        case Section::overall:
            return "5 Overall: smell and taste once more; is it this style?";
    }
    return {};
}

std::string section_head(Section section, const ScoreSheet& sheet, const TextStyle& style) {
    const std::string points = fmt::format("____ of {:>2}", shortest(sheet.points[section]));
    const std::size_t columns = style.width - character_count(points);
    return bold(at_left(cut_end(step_of(section), columns - 1, style), columns), style) + points + '\n';
}

std::string section_text(const Style& described, Section section, const ScoreSheet& sheet,
                         const TextStyle& style) {
    constexpr std::size_t column = text_indent + card_title_columns + 1;
    std::string text = section == Section::appearance ? color_row(described, style) : std::string();
    text += rows(described, section, style);
    text += labeled("  may show", optional_words(described, section), column, style);
    text += labeled("  must not show", not_accepted(described, section), column, style);
    if (text.empty()) {
        text = described.varies ? "  by what is declared\n" : "  nothing laid down\n";
    }
    return section_head(section, sheet, style) + text;
}

/// What few beers show at all, so that any of it marks a style.
bool is_rare(Attribute attribute) {
    constexpr std::array<std::string_view, 7> rare{"roast",  "smoke", "sour", "funk",
                                                   "phenol", "salt",  "spice"};
    return std::find(rare.begin(), rare.end(), word_of(attribute)) != rare.end();
}

/// The level that marks a style; in the mouth all beers show some gas (working values).
double marks_from(Attribute attribute) {
    if (is_rare(attribute)) {
        return 1.0;
    }
    return section_of(attribute) == Section::mouthfeel ? 5.0 : 3.0;
}

/// What must be there and marks the style, each word once: what few beers show, then the strongest.
std::vector<Attribute> marks_of(const Style& described) {
    constexpr std::size_t most = 4;
    std::vector<Attribute> found;
    const auto is_mark = [](Attribute attribute, const Expectation& expectation) {
        return is_level(attribute) && !expectation.assumed && expectation.low >= marks_from(attribute);
    };
    for (const Section section : {Section::aroma, Section::flavor, Section::mouthfeel}) {
        const std::vector<Attribute> more = those_of(described, section, is_mark);
        found.insert(found.end(), more.begin(), more.end());
    }
    std::stable_sort(found.begin(), found.end(), [&](Attribute left, Attribute right) {
        return std::pair(is_rare(left), prominence(left, described)) >
               std::pair(is_rare(right), prominence(right, described));
    });
    std::vector<Attribute> marks;
    for (const Attribute attribute : found) {
        const bool is_new = std::none_of(marks.begin(), marks.end(),
                                         [&](Attribute mark) { return word_of(mark) == word_of(attribute); });
        if (is_new && marks.size() < most) {
            marks.push_back(attribute);
        }
    }
    return marks;
}

/// The marks of the style, and where it stands on the scales that every beer has a place on.
std::string look_for(const Style& described) {
    std::vector<Attribute> told = marks_of(described);
    for (const Attribute attribute :
         {Attribute::flavor_balance, Attribute::flavor_finish, Attribute::mouthfeel_body}) {
        if (described.expected[attribute]) {
            told.push_back(attribute);
        }
    }
    Words words;
    for (const Attribute attribute : told) {
        words.push_back(fmt::format("{} {}", spoken(word_of(attribute)),
                                    accepted_words(attribute, *described.expected[attribute])));
    }
    return joined(words, "; ");
}

/// Whether it may show somewhere, such as hops that are tasted and not smelled.
bool may_show_somewhere(std::string_view word, const Style& described) {
    return std::any_of(all_attributes().begin(), all_attributes().end(), [&](Attribute attribute) {
        const auto& expectation = described.expected[attribute];
        return word_of(attribute) == word && expectation && expectation->high > 0.0;
    });
}

/// What the style itself rules out wherever it might show, each word once.
std::string ruled_out(const Style& described) {
    Words words;
    for (const Section section : {Section::aroma, Section::flavor, Section::mouthfeel}) {
        for (const Attribute attribute : those_of(described, section, may_not_show)) {
            const std::string word = spoken(word_of(attribute));
            const bool is_new = std::find(words.begin(), words.end(), word) == words.end();
            const bool is_stated = !described.expected[attribute]->assumed;
            if (is_new && is_stated && !may_show_somewhere(word_of(attribute), described)) {
                words.push_back(word);
            }
        }
    }
    return joined(words, ", ");
}

std::string varying_text(const Style& described, const Surroundings& surroundings) {
    if (!described.varies) {
        return {};
    }
    Words codes;
    for (const Style& variant : surroundings.variants) {
        codes.push_back(variant.code);
    }
    return codes.empty() ? "what is not said here goes by the declared base style or kind of beer"
                         : fmt::format("with what is declared: see {}", joined(codes, ", "));
}

std::string first_look(const Style& described, const Surroundings& surroundings, const Handbook& handbook,
                       const TextStyle& style) {
    const std::size_t column = card_title_columns + 1;
    const auto& known = handbook.phrases.declarations;
    std::string text = labeled("Look for", look_for(described), column, style);
    text += labeled("Out of place", ruled_out(described), column, style);
    text +=
        labeled("Form must say", declared_words_of(described.must_declare, described, known), column, style);
    text +=
        labeled("Form may say", declared_words_of(described.may_declare, described, known), column, style);
    text += labeled("Varies", varying_text(described, surroundings), column, style);
    text += labeled("Made with", plain_words(described.grist_expected), column, style);
    return text + labeled("Never with", plain_words(described.grist_inappropriate), column, style);
}

std::string neighbor_line(const Neighbor& neighbor, const TextStyle& style) {
    constexpr std::size_t most_reasons = 3;
    Words reasons;
    for (const Contrast& contrast : neighbor.apart) {
        const std::string words = second_in_words(contrast);
        if (reasons.size() < most_reasons &&
            std::find(reasons.begin(), reasons.end(), words) == reasons.end()) {
            reasons.push_back(words);
        }
    }
    const std::string said = neighbor.said.empty() ? joined(reasons, ", ") : neighbor.said;
    const std::string name = neighbor.name.empty() ? neighbor.code : neighbor.code + ' ' + neighbor.name;
    return paragraph(shown(fmt::format("{}: {}", said.empty() ? "much the same" : said, name), style),
                     text_indent, 2 * text_indent, style);
}

std::string neighbors_text(const Surroundings& surroundings, const TextStyle& style) {
    if (surroundings.neighbors.empty()) {
        return {};
    }
    std::string text = "  If it is rather ..., it may be a ...\n";
    for (const Neighbor& neighbor : surroundings.neighbors) {
        text += neighbor_line(neighbor, style);
    }
    return text;
}

std::string numbers_line(const Style& described, const TextStyle& style) {
    Words numbers;
    for (const Number number : guide_numbers()) {
        if (const auto range = range_of(described.ranges, number)) {
            const std::string words = range_words(number, *range, style);
            const bool is_gravity = words_for(number).unit.empty();
            numbers.push_back(is_gravity ? fmt::format("{} {}", words_for(number).name, words) : words);
        }
    }
    return numbers.empty() ? "the guide prints none"
                           : joined(numbers, ", ") + "; they order the flight and take no points";
}

std::string customary_line(const Style& described, const TextStyle& style) {
    const Custom& custom = described.custom;
    Words parts;
    const auto add = [&](std::string_view what, const Words& words) {
        if (!words.empty()) {
            parts.push_back(fmt::format("{} {}", what, joined(words, ", ")));
        }
    };
    add("yeast", custom.yeast_typical);
    add("hops", custom.hops_typical);
    add("grist", custom.grist_base);
    add("with", custom.grist_typical);
    if (!custom.dry_hop.empty()) {
        parts.push_back("dry hop " + custom.dry_hop);
    }
    if (custom.carbonation) {
        parts.push_back(fmt::format("{}{}{} vol", shortest(custom.carbonation->low.value()), dash(style),
                                    shortest(custom.carbonation->high.value())));
    }
    return joined(parts, "; ");
}

std::string bands_line(const ScoreSheet& sheet, const TextStyle& style) {
    Words bands;
    for (const ScoreBand& band : sheet.bands) {
        bands.push_back(
            fmt::format("{} {}{}{}", band.name, shortest(band.low), dash(style), shortest(band.high)));
    }
    return joined(bands, ", ");
}

}  // namespace

std::string style_card(const Style& shown_style, const Surroundings& surroundings, const Handbook& handbook,
                       const TextStyle& style) {
    const std::size_t column = card_title_columns + 1;
    std::string text = heading(fmt::format("{} {}", shown_style.code, shown_style.name), shown_style.guide,
                               shown_style.category, style);
    text += first_look(shown_style, surroundings, handbook, style) + '\n';
    for (const Section section : {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel}) {
        text += section_text(shown_style, section, handbook.score_sheet, style);
    }
    text += section_head(Section::overall, handbook.score_sheet, style);
    text += neighbors_text(surroundings, style) + '\n';
    text += labeled("Customary", customary_line(shown_style, style), column, style);
    text += labeled("Numbers", numbers_line(shown_style, style), column, style);
    return text + labeled("Bands", bands_line(handbook.score_sheet, style), column, style);
}

}  // namespace entrywise

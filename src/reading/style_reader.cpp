#include "reading/style_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "base/nearest_word.hpp"
#include "reading/fields.hpp"
#include "reading/levels.hpp"

namespace entrywise {

namespace {

constexpr std::array<Word<std::string_view>, 5> fermentation_words{{
    {"top", "top"},
    {"bottom", "bottom"},
    {"either", "either"},
    {"mixed", "mixed"},
    {"spontaneous", "spontaneous"},
}};

constexpr std::array<Word<std::string_view>, 3> dry_hop_customs{{
    {"typical", "typical"},
    {"possible", "possible"},
    {"unusual", "unusual"},
}};

constexpr std::array<Word<int>, 3> breadths{{{"1", 1}, {"2", 2}, {"3", 3}}};

using Texts = std::vector<std::string>;

std::string word(Fields& fields, std::string_view key, std::span<const Word<std::string_view>> words) {
    return std::string(fields.optional_word(key, words).value_or(""));
}

/// Reads the map below a key, if there is one, and refuses what was not asked for in it.
template <class Read>
void with_map(Fields& parent, std::string_view key, std::string thing, Read read) {
    const Node* node = parent.find(key);
    if (node != nullptr) {
        Fields fields(*node, std::move(thing), parent.faults());
        read(fields);
        fields.refuse_others();
    }
}

template <class Quantity>
std::optional<Range<Quantity>> range(Fields& fields, std::string_view key) {
    const auto span = fields.optional<OpenSpan<Quantity>>(key);
    return span ? std::optional(Range<Quantity>{span->low, span->high, span->below_high}) : std::nullopt;
}

void read_ranges(Fields& fields, StyleRanges& ranges) {
    ranges.original_gravity = range<SpecificGravity>(fields, "original_gravity");
    ranges.final_gravity = range<SpecificGravity>(fields, "final_gravity");
    ranges.alcohol = range<AlcoholByVolume>(fields, "alcohol");
    ranges.bitterness = range<Bitterness>(fields, "bitterness");
    ranges.color = range<Color>(fields, "color");
}

void read_section(Fields& fields, Section section, bool assumed, Style& style) {
    for (const Attribute attribute : all_attributes()) {
        if (section_of(attribute) != section) {
            continue;
        }
        const Node* node = fields.find(word_of(attribute));
        const auto levels =
            node == nullptr ? std::nullopt : levels_from(*node, scale_of(attribute), fields.faults());
        if (!levels) {
            continue;
        }
        if (style.expected[attribute]) {
            fields.faults().add(node->position,
                                {.found = fmt::format("{} both stated and assumed", word_of(attribute)),
                                 .expected = "each attribute once",
                                 .remedy = "Delete what is assumed."});
        }
        style.expected[attribute] = Expectation{levels->low, levels->high, assumed};
    }
}

void read_sections(Fields& fields, bool assumed, Style& style) {
    for (const Section section : {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel}) {
        with_map(fields, word_of(section), fmt::format("the {}", word_of(section)),
                 [&](Fields& attributes) { read_section(attributes, section, assumed, style); });
    }
}

/// What a guide can leave open beside the attributes; nothing reckons with it.
constexpr std::array<std::string_view, 4> other_judgement_calls{"fermentation", "grist.expected",
                                                                "grist.allowed", "grist.inappropriate"};

std::optional<Attribute> attribute_from(const Node& node, FaultLog& faults) {
    const auto text = scalar_text(node, "section.attribute", faults);
    if (!text) {
        return std::nullopt;
    }
    if (std::find(other_judgement_calls.begin(), other_judgement_calls.end(), *text) !=
        other_judgement_calls.end()) {
        return std::nullopt;
    }
    for (const Attribute attribute : all_attributes()) {
        if (name_of(attribute) == *text) {
            return attribute;
        }
    }
    Texts known(other_judgement_calls.begin(), other_judgement_calls.end());
    for (const Attribute attribute : all_attributes()) {
        known.emplace_back(name_of(attribute));
    }
    faults.add(
        node.position,
        {.found = shown(node), .expected = "section.attribute", .nearest = nearest_word(*text, known)});
    return std::nullopt;
}

void read_judgement_calls(Fields& fields, Style& style) {
    const auto attributes =
        read_list(fields.find("judgement_calls"), "a list of attributes", fields.faults(),
                  [&](const Node& item) { return attribute_from(item, fields.faults()); });
    for (const auto& attribute : attributes) {
        if (attribute) {
            style.judgement_calls.push_back(*attribute);
        }
    }
}

std::map<std::string, std::string> read_neighbors(Fields& fields) {
    std::map<std::string, std::string> neighbors;
    const Node* node = fields.find("neighbors");
    if (node == nullptr) {
        return neighbors;
    }
    const Fields is_a_map(*node, "the neighbors", fields.faults());
    for (const Entry& entry : node->entries) {
        neighbors[entry.key] = ReadAs<std::string>::from(entry.value, fields.faults()).value_or("");
    }
    return neighbors;
}

void read_custom(Fields& fields, Custom& custom) {
    with_map(fields, "yeast", "the customary yeast", [&](Fields& yeast) {
        custom.yeast_typical = yeast.texts("typical");
        custom.yeast_possible = yeast.texts("possible");
    });
    with_map(fields, "hops", "the customary hops", [&](Fields& hops) {
        custom.hops_typical = hops.texts("typical");
        custom.hops_possible = hops.texts("possible");
        custom.hops_unusual = hops.texts("unusual");
    });
    custom.dry_hop = word(fields, "dry_hop", dry_hop_customs);
    with_map(fields, "grist", "the customary grist", [&](Fields& grist) {
        custom.grist_base = grist.texts("base");
        custom.grist_typical = grist.texts("typical");
        custom.grist_possible = grist.texts("possible");
        custom.grist_unusual = grist.texts("unusual");
    });
    custom.carbonation = fields.optional<Span<Carbonation>>("carbonation");
    custom.breadth = fields.optional_word<int>("breadth", breadths).value_or(custom.breadth);
    custom.seldom = fields.optional<bool>("seldom").value_or(false);
    custom.neighbors = read_neighbors(fields);
}

void read_lists(Fields& fields, Style& style) {
    with_map(fields, "notes", "the notes", [&](Fields& notes) {
        style.hop_notes = notes.texts("hop");
        style.malt_notes = notes.texts("malt");
        style.ester_notes = notes.texts("ester");
        style.phenol_notes = notes.texts("phenol");
    });
    with_map(fields, "grist", "the grist", [&](Fields& grist) {
        style.grist_expected = grist.texts("expected");
        style.grist_allowed = grist.texts("allowed");
        style.grist_inappropriate = grist.texts("inappropriate");
    });
    with_map(fields, "declares", "what is declared", [&](Fields& declares) {
        style.must_declare = declares.texts("must");
        style.may_declare = declares.texts("may");
    });
}

void check_code(Fields& fields, const Style& style, const StyleName& name) {
    const Node* code = fields.find("code");
    if (code != nullptr && !style.code.empty() && style.code != name.code) {
        fields.faults().add(code->position, {.found = in_quotes(style.code),
                                             .expected = in_quotes(name.code),
                                             .remedy = "A style's file is named for its code."});
    }
}

}  // namespace

Outcome<Style> read_style(const Node& document, const StyleName& name, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "a style", faults);
    if (!check_format(fields, "style")) {
        return faults.in_order();
    }
    Style style;
    style.guide = name.guide;
    style.file = file;
    style.code = fields.required<std::string>("code");
    check_code(fields, style, name);
    style.name = fields.required<std::string>("name");
    style.category = fields.required<std::string>("category");
    fields.required<std::string>("source");
    style.varies = fields.optional<bool>("varies").value_or(false);
    style.fermentation = word(fields, "fermentation", fermentation_words);
    with_map(fields, "ranges", "the ranges", [&](Fields& ranges) { read_ranges(ranges, style.ranges); });
    read_sections(fields, false, style);
    with_map(fields, "assumed", "what is assumed",
             [&](Fields& assumed) { read_sections(assumed, true, style); });
    read_lists(fields, style);
    read_judgement_calls(fields, style);
    with_map(fields, "custom", "the custom", [&](Fields& custom) { read_custom(custom, style.custom); });
    fields.refuse_others();
    if (!faults.empty()) {
        return faults.in_order();
    }
    return style;
}

}  // namespace entrywise

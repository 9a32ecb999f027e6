#include "reading/remark_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <string_view>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/fields.hpp"

namespace entrywise {

namespace {

using Texts = std::vector<std::string>;

constexpr std::array<Word<bool>, 2> directions{{{"above", true}, {"below", false}}};

constexpr std::array<Section, section_count> all_sections{
    Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel, Section::overall};

/// Every attribute that a remark can mean, by `section.attribute` or, where `section` is left out, its word.
std::vector<std::string> names_of_attributes(bool with_section) {
    std::vector<std::string> names{with_section ? "appearance.color" : "color"};
    for (const Attribute attribute : all_attributes()) {
        const std::string section(word_of(section_of(attribute)));
        const std::string word(word_of(attribute));
        names.push_back(with_section ? fmt::format("{}.{}", section, word) : word);
    }
    return names;
}

/// The texts of a list, each of which must be one of the known.
std::vector<const Node*> known_items(const Node* list, const std::vector<std::string>& known,
                                     FaultLog& faults) {
    std::vector<const Node*> items;
    if (list == nullptr) {
        return items;
    }
    for (const Node& item : list->items) {
        if (std::find(known.begin(), known.end(), item.text) == known.end()) {
            faults.add(item.position, {.found = shown(item),
                                       .expected = "an attribute that is judged",
                                       .nearest = nearest_word(item.text, known)});
        } else {
            items.push_back(&item);
        }
    }
    return items;
}

std::vector<RemarkTarget> read_targets(Fields& fields) {
    static const std::vector<std::string> known = names_of_attributes(true);
    std::vector<RemarkTarget> targets;
    for (const Node* item : known_items(fields.need("means"), known, fields.faults())) {
        const std::string_view name = item->text;
        const std::size_t dot = name.find('.');
        targets.push_back({section_named(name.substr(0, dot)), std::string(name.substr(dot + 1))});
    }
    return targets;
}

RemarkPhrase read_remark_phrase(const Node& node, FaultLog& faults) {
    Fields fields(node, "a remark", faults);
    RemarkPhrase phrase;
    phrase.says = fields.required<Texts>("says");
    if (fields.optional<bool>("fault").value_or(false)) {
        phrase.means = {{std::nullopt, "fault"}};
        phrase.unmissed = true;
        phrase.check = fields.required<std::string>("check");
    } else {
        phrase.means = read_targets(fields);
        fields.need("direction");
        phrase.above = fields.optional_word<bool>("direction", directions).value_or(true);
        phrase.unmissed = fields.optional<bool>("unmissed").value_or(false);
        phrase.alone = fields.optional<bool>("alone").value_or(false);
    }
    fields.refuse_others();
    return phrase;
}

RemarkPlace read_place(const Node& node, FaultLog& faults) {
    Fields fields(node, "words for a place of the sheet", faults);
    RemarkPlace place;
    place.says = fields.required<Texts>("says");
    if (const Node* sections = fields.need("sections")) {
        for (const Node& item : sections->items) {
            if (const auto section = section_named(item.text)) {
                place.sections.push_back(*section);
            } else {
                faults.add(item.position, {.found = shown(item), .expected = "a section of the sheet"});
            }
        }
    }
    fields.refuse_others();
    return place;
}

Elsewhere read_elsewhere(const Node& node, FaultLog& faults) {
    static const std::vector<std::string> known = names_of_attributes(false);
    Fields fields(node, "a cause beside the recipe", faults);
    Elsewhere elsewhere;
    for (const Node* item : known_items(fields.need("of"), known, faults)) {
        elsewhere.of.push_back(item->text);
    }
    fields.need("direction");
    elsewhere.above = fields.optional_word<bool>("direction", directions).value_or(true);
    elsewhere.check = fields.required<std::string>("check");
    fields.refuse_others();
    return elsewhere;
}

BySection<std::string> read_section_checks(const Node* node, FaultLog& faults) {
    BySection<std::string> checks;
    if (node != nullptr) {
        Fields fields(*node, "what costs points besides the recipe", faults);
        for (const Section section : all_sections) {
            checks[section] = fields.required<std::string>(word_of(section));
        }
        fields.refuse_others();
    }
    return checks;
}

/// A phrase that stands twice has two meanings, of which one would never be taken.
void refuse_doubles(const Node* list, FaultLog& faults) {
    std::set<std::string> seen;
    if (list == nullptr) {
        return;
    }
    for (const Node& remark : list->items) {
        const Node* says = value_of(remark, "says");
        for (const Node& phrase : says == nullptr ? remark.items : says->items) {
            if (!seen.insert(lowered(phrase.text)).second) {
                faults.add(phrase.position,
                           {.found = shown(phrase) + " a second time", .expected = "each phrase once"});
            }
        }
    }
}

}  // namespace

Outcome<RemarkBook> read_remarks(const Node& document, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "the remarks", faults);
    RemarkBook book;
    if (check_format(fields, "remarks")) {
        book.lack = fields.required<Texts>("lack");
        book.negation = fields.required<Texts>("negation");
        book.excess = fields.required<Texts>("excess");
        book.praise = fields.required<Texts>("praise");
        book.skipped = fields.required<Texts>("skipped");
        book.joins = fields.required<Texts>("joins");
        book.breaks = fields.required<Texts>("breaks");
        book.tails = fields.required<Texts>("tails");
        book.unstemmed = fields.optional<Texts>("unstemmed").value_or(Texts());
        book.places = read_list(fields.need("places"), "a list of places", faults,
                                [&](const Node& node) { return read_place(node, faults); });
        book.section_checks = read_section_checks(fields.need("sections"), faults);
        const Node* remarks = fields.need("remarks");
        book.phrases = read_list(remarks, "a list of remarks", faults,
                                 [&](const Node& node) { return read_remark_phrase(node, faults); });
        refuse_doubles(remarks, faults);
        book.elsewhere = read_list(fields.find("elsewhere"), "a list of causes beside the recipe", faults,
                                   [&](const Node& node) { return read_elsewhere(node, faults); });
        fields.refuse_others();
    }
    if (!faults.empty()) {
        return faults.in_order();
    }
    return book;
}

}  // namespace entrywise

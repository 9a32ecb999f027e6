#include "reading/phrase_reader.hpp"

#include <string>
#include <utility>

#include "reading/fields.hpp"

namespace entrywise {

namespace {

using Texts = std::vector<std::string>;

std::pair<std::string, Phrase> read_phrase(const Node& node, FaultLog& faults) {
    Fields fields(node, "a phrase", faults);
    std::string attribute = fields.required<std::string>("attribute");
    Phrase phrase;
    phrase.noun = fields.required<std::string>("noun");
    phrase.above = fields.optional<std::string>("above").value_or("");
    phrase.below = fields.optional<std::string>("below").value_or("");
    phrase.right = fields.optional<std::string>("right").value_or("");
    phrase.lower = fields.optional<std::string>("lower").value_or("");
    phrase.raise = fields.optional<std::string>("raise").value_or("");
    phrase.more_than_asked = fields.optional<std::string>("more_than_asked").value_or("");
    phrase.temper = fields.optional<std::string>("temper").value_or("");
    fields.refuse_others();
    return {std::move(attribute), std::move(phrase)};
}

std::pair<std::string, std::string> read_hop_family(const Node& node, FaultLog& faults) {
    Fields fields(node, "a hop family", faults);
    std::string family = fields.required<std::string>("family");
    std::string said = fields.required<std::string>("said");
    fields.refuse_others();
    return {std::move(family), std::move(said)};
}

std::map<std::string, Texts> read_choices(const Node* node, FaultLog& faults) {
    std::map<std::string, Texts> choices;
    if (node == nullptr) {
        return choices;
    }
    const Fields is_a_map(*node, "choices by the code of a style", faults);
    for (const Entry& entry : node->entries) {
        choices[entry.key] = ReadAs<Texts>::from(entry.value, faults).value_or(Texts());
    }
    return choices;
}

Declaration read_declaration(const Node& node, FaultLog& faults) {
    Fields fields(node, "a declaration", faults);
    Declaration declaration;
    declaration.name = fields.required<std::string>("declaration");
    declaration.said = fields.required<std::string>("said");
    declaration.keys = fields.optional<Texts>("keys").value_or(Texts{declaration.name});
    declaration.by_base_style = fields.optional<bool>("by_base_style").value_or(false);
    declaration.only_if_any = fields.optional<bool>("only_if_any").value_or(false);
    declaration.choices = read_choices(fields.find("choices"), faults);
    fields.refuse_others();
    return declaration;
}

Texts read_kin(const Node& node, FaultLog& faults) {
    return ReadAs<Texts>::from(node, faults).value_or(Texts());
}

}  // namespace

Outcome<PhraseBook> read_phrases(const Node& document, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "the phrases", faults);
    PhraseBook book;
    if (check_format(fields, "phrases")) {
        const auto phrases = read_list(fields.need("phrases"), "a list of phrases", faults,
                                       [&](const Node& node) { return read_phrase(node, faults); });
        book.by_attribute.insert(phrases.begin(), phrases.end());
        book.kin = read_list(fields.find("kin"), "a list of lists of words", faults,
                             [&](const Node& node) { return read_kin(node, faults); });
        const auto families = read_list(fields.find("hop_families"), "a list of hop families", faults,
                                        [&](const Node& node) { return read_hop_family(node, faults); });
        book.hop_families.insert(families.begin(), families.end());
        book.declarations = read_list(fields.find("declarations"), "a list of declarations", faults,
                                      [&](const Node& node) { return read_declaration(node, faults); });
        fields.refuse_others();
    }
    if (!faults.empty()) {
        return faults.in_order();
    }
    return book;
}

}  // namespace entrywise

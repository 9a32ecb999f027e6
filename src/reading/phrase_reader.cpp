#include "reading/phrase_reader.hpp"

#include <string>
#include <utility>

#include "reading/fields.hpp"

namespace entrywise {

namespace {

std::pair<std::string, Phrase> read_phrase(const Node& node, FaultLog& faults) {
    Fields fields(node, "a phrase", faults);
    std::string attribute = fields.required<std::string>("attribute");
    Phrase phrase;
    phrase.noun = fields.required<std::string>("noun");
    phrase.above = fields.optional<std::string>("above").value_or("");
    phrase.below = fields.optional<std::string>("below").value_or("");
    phrase.lower = fields.optional<std::string>("lower").value_or("");
    phrase.raise = fields.optional<std::string>("raise").value_or("");
    fields.refuse_others();
    return {std::move(attribute), std::move(phrase)};
}

}  // namespace

Outcome<PhraseBook> read_phrases(const Node& document, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "the phrases", faults);
    PhraseBook book;
    if (check_format(fields, "phrases")) {
        const auto phrases = read_list(fields.need("phrases"), "a list of phrases", faults,
                                       [&](const Node& node) { return read_phrase(node, faults); });
        book.insert(phrases.begin(), phrases.end());
        fields.refuse_others();
    }
    if (!faults.empty()) {
        return faults.in_order();
    }
    return book;
}

}  // namespace entrywise

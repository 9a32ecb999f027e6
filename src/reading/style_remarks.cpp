#include "reading/style_remarks.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "reading/fault_log.hpp"

namespace entrywise {

namespace {

using Words = std::vector<std::string>;

void add_all(std::set<std::string>& known, std::initializer_list<const Words*> lists) {
    for (const Words* list : lists) {
        known.insert(list->begin(), list->end());
    }
}

/// The node below keys that follow each other; null if there is none.
const Node* below(const Node& document, std::initializer_list<std::string_view> keys) {
    const Node* node = &document;
    for (const std::string_view key : keys) {
        node = node == nullptr ? nullptr : value_of(*node, key);
    }
    return node;
}

class Remarks {
  public:
    Remarks(const Node& document, const std::string& file) : document_(document), log_(file) {}

    /// Looks at each word of each list of a map.
    void check_words(std::initializer_list<std::string_view> keys, std::string_view thing,
                     const std::function<bool(const std::string&)>& is_known,
                     const std::function<std::string(const std::string&)>& nearest) {
        const Node* map = below(document_, keys);
        if (map == nullptr) {
            return;
        }
        for (const Entry& entry : map->entries) {
            for (const Node& item : entry.value.items) {
                if (!is_known(item.text)) {
                    log_.add(item.position, {.found = in_quotes(item.text),
                                             .expected = fmt::format("a known {}", thing),
                                             .nearest = nearest(item.text)});
                }
            }
        }
    }

    void check_words(std::initializer_list<std::string_view> keys, std::string_view thing,
                     const std::set<std::string>& known) {
        check_words(
            keys, thing, [&](const std::string& word) { return known.contains(word); },
            [&](const std::string& word) {
                return nearest_word(word, {known.begin(), known.end()});
            });
    }

    void check_neighbors(const std::string& own_code, Words codes) {
        std::erase(codes, own_code);
        const Node* neighbors = below(document_, {"custom", "neighbors"});
        for (const Entry& entry : neighbors == nullptr ? std::vector<Entry>() : neighbors->entries) {
            if (std::find(codes.begin(), codes.end(), entry.key) == codes.end()) {
                log_.add(entry.key_position, {.found = fmt::format("the neighbor {}", in_quotes(entry.key)),
                                              .expected = "the code of another style of the guide",
                                              .nearest = nearest_word(entry.key, codes)});
            }
        }
    }

    void add(std::initializer_list<std::string_view> keys, Flaw flaw) {
        const Node* node = below(document_, keys);
        log_.add(node == nullptr ? Position() : node->position, std::move(flaw));
    }

    std::vector<Fault> in_order() const { return log_.in_order(); }

  private:
    const Node& document_;
    FaultLog log_;
};

/// Percent of alcohol that a point of gravity becomes: common practice.
constexpr double alcohol_of_gravity = 131.0;
/// How far the rule may be off, in percent of alcohol: working value.
constexpr double tolerance = 0.5;

/// Ranges of styles that take in much may overlap; what lies wholly on the wrong side was exchanged or
/// mistyped.
void check_numbers(const StyleRanges& ranges, Remarks& remarks) {
    const auto& original = ranges.original_gravity;
    const auto& final = ranges.final_gravity;
    const auto& alcohol = ranges.alcohol;
    if (!original || !final || !original->low || !original->high || !final->low || !final->high) {
        return;
    }
    if (*final->low >= *original->high) {
        remarks.add({"ranges", "final_gravity"},
                    {.found = fmt::format("a final gravity from {}", fixed(final->low->value(), 3)),
                     .expected = fmt::format("less than the original gravity, {} at most",
                                             fixed(original->high->value(), 3)),
                     .remedy = "Check whether the two are exchanged."});
        return;
    }
    const double least = std::max(alcohol_of_gravity * (*original->low - *final->high).value(), 0.0);
    const double most = alcohol_of_gravity * (*original->high - *final->low).value();
    const bool too_strong =
        alcohol && alcohol->low && in(*alcohol->low, percent_by_volume) > most + tolerance;
    const bool too_weak =
        alcohol && alcohol->high && in(*alcohol->high, percent_by_volume) < least - tolerance;
    if (too_strong || too_weak) {
        remarks.add({"ranges", "alcohol"},
                    {.found = too_strong ? "more alcohol than these gravities give"
                                         : "less alcohol than these gravities give",
                     .expected = fmt::format("something from {} to {} %", fixed(least, 1), fixed(most, 1))});
    }
}

}  // namespace

StyleVocabulary vocabulary_of(const std::vector<Style>& styles, const PhraseBook& phrases) {
    StyleVocabulary known;
    for (const Style& style : styles) {
        const Custom& custom = style.custom;
        add_all(known.notes, {&style.hop_notes, &style.malt_notes, &style.ester_notes, &style.phenol_notes});
        add_all(known.grist, {&style.grist_expected, &style.grist_allowed, &style.grist_inappropriate});
        add_all(known.declares, {&style.must_declare, &style.may_declare});
        add_all(known.custom_hops, {&custom.hops_typical, &custom.hops_possible, &custom.hops_unusual});
        add_all(known.custom_grist,
                {&custom.grist_base, &custom.grist_typical, &custom.grist_possible, &custom.grist_unusual});
        add_all(known.yeasts, {&custom.yeast_typical, &custom.yeast_possible});
    }
    for (const Words& words : phrases.kin.lists()) {
        add_all(known.notes, {&words});
    }
    for (const auto& [family, said] : phrases.hop_families) {
        known.custom_hops.insert(family);
    }
    for (const Declaration& declaration : phrases.declarations) {
        known.declares.insert(declaration.name);
    }
    return known;
}

std::vector<Fault> style_remarks(const Node& document, const Style& style, const StyleVocabulary& vocabulary,
                                 const KnownIngredients& ingredients, const std::vector<std::string>& codes) {
    Remarks remarks(document, style.file);
    remarks.check_words({"notes"}, "smell or taste", vocabulary.notes);
    remarks.check_words({"grist"}, "ingredient", vocabulary.grist);
    remarks.check_words({"declares"}, "declaration", vocabulary.declares);
    remarks.check_words(
        {"custom", "yeast"}, "yeast class",
        [&](const std::string& name) {
            return vocabulary.yeasts.contains(name) || ingredients.yeast(name).has_value();
        },
        [&](const std::string& name) { return ingredients.nearest_yeast(name); });
    remarks.check_words({"custom", "hops"}, "hop family", vocabulary.custom_hops);
    remarks.check_words(
        {"custom", "grist"}, "malt, sugar or group of them",
        [&](const std::string& name) {
            return vocabulary.custom_grist.contains(name) || ingredients.fermentable(name).has_value();
        },
        [&](const std::string& name) {
            const std::string nearest = ingredients.nearest_fermentable(name);
            return nearest.empty()
                       ? nearest_word(name, {vocabulary.custom_grist.begin(), vocabulary.custom_grist.end()})
                       : nearest;
        });
    remarks.check_neighbors(style.code, codes);
    check_numbers(style.ranges, remarks);
    return remarks.in_order();
}

}  // namespace entrywise

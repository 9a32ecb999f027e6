#include "advice/heard.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <string_view>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/stem.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

/// What a run of words is to a note. Of runs of one length the first kind counts.
enum class Kind { phrase, negation, lack, excess, praise, vague_phrase, place, joins, breaks, tail, skipped };

struct Pattern {
    std::vector<std::string> stems;
    Kind kind = Kind::skipped;
    std::size_t index = 0;  ///< of the phrase or place
};

struct WordRead {
    std::string literal;
    std::string stem;
};

/// A run of words recognized, or a single word that is not.
struct Item {
    std::optional<Kind> kind;
    std::size_t index = 0;
    std::string literal;
};

bool is_in_word(char letter) {
    const bool is_ascii = static_cast<unsigned char>(letter) < 0x80U;
    return !is_ascii || (letter >= '0' && letter <= '9') || (letter >= 'a' && letter <= 'z');
}

/// The words of a text, with their place in it lost: small letters, apostrophes left out.
std::vector<std::string> words_in(std::string_view text) {
    std::vector<std::string> words;
    bool begins = true;
    for (const char letter : lowered(text)) {
        if (letter == '\'') {
            continue;
        }
        if (!is_in_word(letter)) {
            begins = true;
            continue;
        }
        if (begins) {
            words.emplace_back();
            begins = false;
        }
        words.back() += letter;
    }
    return words;
}

/// How a run of words bends the remark it stands with.
enum class Bend { none, lack, excess, praise };

struct BendingRun {
    bool negation = false;
    bool lack = false;
    bool excess = false;
    bool praise = false;

    bool add(Kind kind) {
        negation = negation || kind == Kind::negation;
        lack = lack || kind == Kind::lack;
        excess = excess || kind == Kind::excess;
        praise = praise || kind == Kind::praise;
        return kind == Kind::negation || kind == Kind::lack || kind == Kind::excess || kind == Kind::praise;
    }

    Bend bend() const {
        if (negation && praise) {
            return Bend::excess;
        }
        if (lack) {
            return Bend::lack;
        }
        if (negation) {
            return excess ? Bend::praise : Bend::lack;
        }
        return praise ? Bend::praise : excess ? Bend::excess : Bend::none;
    }
};

bool bends(const Item& item) {
    return item.kind && BendingRun().add(*item.kind);
}

bool is_phrase(const Item& item) {
    return item.kind == Kind::phrase || item.kind == Kind::vague_phrase;
}

/// The run that follows a phrase and bends it. `bitterness and hop flavor too low`: where things are joined,
/// what follows the last of them bends them all, as long as they are named without a judgement of their own.
BendingRun run_after(const std::vector<Item>& items, std::size_t phrase, bool is_neutral) {
    BendingRun after;
    bool bent = false;
    for (std::size_t next = phrase + 1; next < items.size(); ++next) {
        const Item& item = items[next];
        const bool ends = item.kind == Kind::joins || is_phrase(item);
        const bool joins_another =
            next + 1 < items.size() && item.kind == Kind::joins && is_phrase(items[next + 1]);
        if (ends && !bent && is_neutral && joins_another) {
            ++next;
        } else if (ends) {
            break;
        } else if (item.kind) {
            bent = after.add(*item.kind) || bent;
        }
    }
    return after;
}

}  // namespace

std::string id_of(const HeardRemark& remark) {
    const std::string section =
        remark.target.section ? std::string(word_of(*remark.target.section)) : std::string("any");
    return section + '.' + remark.target.attribute +
           (remark.direction == Direction::above ? ".above" : ".below");
}

struct Ear::Patterns {
    explicit Patterns(const RemarkBook& remark_book);

    WordRead read(const std::string& word) const {
        const bool as_it_is =
            std::find(book.unstemmed.begin(), book.unstemmed.end(), word) != book.unstemmed.end();
        return {word, as_it_is ? '=' + word : stem_of(word)};
    }

    void add(const std::vector<std::string>& says, Kind kind, std::size_t index = 0);
    std::vector<Item> items_of(const std::vector<WordRead>& words) const;
    std::vector<Item> items_before_a_tail(const std::string& text) const;
    std::vector<std::string> between_breaks(const std::string& part) const;
    bool is_transparent(const WordRead& word) const;
    bool begins_a_tail(const std::vector<WordRead>& words, std::size_t at) const;
    std::optional<std::vector<std::size_t>> match(const Pattern& pattern, const std::vector<WordRead>& words,
                                                  std::size_t at) const;
    HeardClause clause_of(std::string text, const std::vector<Item>& items,
                          const std::vector<Section>& carried) const;
    std::vector<Section> places_for(const std::vector<Item>& items, std::size_t phrase,
                                    const std::vector<Section>& carried) const;
    void hear_phrase(const RemarkPhrase& phrase, Bend bend, bool across_a_join,
                     const std::vector<Section>& places, HeardClause& clause) const;
    std::vector<UnknownWord> unknown_in(const std::vector<Item>& items) const;

    const RemarkBook& book;
    std::map<std::string, std::vector<Pattern>> by_first_stem;
    std::vector<std::string> known_words;  ///< single words of phrases, to offer
};

Ear::Patterns::Patterns(const RemarkBook& remark_book) : book(remark_book) {
    for (std::size_t index = 0; index < book.phrases.size(); ++index) {
        const RemarkPhrase& phrase = book.phrases[index];
        add(phrase.says, phrase.alone ? Kind::vague_phrase : Kind::phrase, index);
        known_words.insert(known_words.end(), phrase.says.begin(), phrase.says.end());
    }
    for (std::size_t index = 0; index < book.places.size(); ++index) {
        add(book.places[index].says, Kind::place, index);
    }
    add(book.negation, Kind::negation);
    add(book.lack, Kind::lack);
    add(book.excess, Kind::excess);
    add(book.praise, Kind::praise);
    add(book.skipped, Kind::skipped);
    add(book.joins, Kind::joins);
    add(book.breaks, Kind::breaks);
    add(book.tails, Kind::tail);
    for (auto& [stem, patterns] : by_first_stem) {
        std::stable_sort(patterns.begin(), patterns.end(), [](const Pattern& first, const Pattern& second) {
            return first.stems.size() != second.stems.size() ? first.stems.size() > second.stems.size()
                                                             : first.kind < second.kind;
        });
    }
}

void Ear::Patterns::add(const std::vector<std::string>& says, Kind kind, std::size_t index) {
    for (const std::string& said : says) {
        Pattern pattern{.stems = {}, .kind = kind, .index = index};
        for (const std::string& word : words_in(said)) {
            pattern.stems.push_back(read(word).stem);
        }
        if (!pattern.stems.empty()) {
            by_first_stem[pattern.stems.front()].push_back(std::move(pattern));
        }
    }
}

/// Whether a phrase of several words may have it in between: `body too full`, `finish is dry`.
bool Ear::Patterns::is_transparent(const WordRead& word) const {
    const auto found = by_first_stem.find(word.stem);
    return found != by_first_stem.end() &&
           std::any_of(found->second.begin(), found->second.end(), [](const Pattern& pattern) {
               const bool fills = pattern.kind == Kind::skipped || pattern.kind == Kind::excess ||
                                  pattern.kind == Kind::lack;
               return pattern.stems.size() == 1 && fills;
           });
}

bool Ear::Patterns::begins_a_tail(const std::vector<WordRead>& words, std::size_t at) const {
    const auto found = by_first_stem.find(words[at].stem);
    return found != by_first_stem.end() &&
           std::any_of(found->second.begin(), found->second.end(), [&](const Pattern& pattern) {
               return pattern.kind == Kind::tail && match(pattern, words, at).has_value();
           });
}

/// Which words a pattern takes from a place on; phrases may leave out words in between.
std::optional<std::vector<std::size_t>> Ear::Patterns::match(const Pattern& pattern,
                                                             const std::vector<WordRead>& words,
                                                             std::size_t at) const {
    const bool may_leave_out = pattern.kind == Kind::phrase || pattern.kind == Kind::vague_phrase;
    std::vector<std::size_t> taken;
    std::size_t next = at;
    for (const std::string& stem : pattern.stems) {
        while (!taken.empty() && may_leave_out && next < words.size() && words[next].stem != stem &&
               is_transparent(words[next]) && !begins_a_tail(words, next)) {
            ++next;
        }
        if (next >= words.size() || words[next].stem != stem) {
            return std::nullopt;
        }
        taken.push_back(next++);
    }
    return taken;
}

std::vector<Item> Ear::Patterns::items_of(const std::vector<WordRead>& words) const {
    std::vector<Item> items;
    std::size_t at = 0;
    while (at < words.size()) {
        const auto candidates = by_first_stem.find(words[at].stem);
        bool found = false;
        for (std::size_t each = 0; candidates != by_first_stem.end() && each < candidates->second.size();
             ++each) {
            const Pattern& pattern = candidates->second[each];
            const auto taken = match(pattern, words, at);
            if (!taken) {
                continue;
            }
            // Words left out in between still bend the phrase, so they come before it.
            std::vector<WordRead> between;
            for (std::size_t word = at; word < taken->back(); ++word) {
                if (std::find(taken->begin(), taken->end(), word) == taken->end()) {
                    between.push_back(words[word]);
                }
            }
            const std::vector<Item> before = items_of(between);
            items.insert(items.end(), before.begin(), before.end());
            items.push_back({pattern.kind, pattern.index, words[at].literal});
            // `light` and `heavy` bend what they stand with, and say something themselves where nothing else
            // does.
            for (std::size_t other = each + 1; bends(items.back()) && other < candidates->second.size();
                 ++other) {
                const Pattern& vague = candidates->second[other];
                if (vague.kind == Kind::vague_phrase && vague.stems == pattern.stems) {
                    items.push_back({vague.kind, vague.index, words[at].literal});
                    break;
                }
            }
            at = taken->back() + 1;
            found = true;
            break;
        }
        if (!found) {
            items.push_back({std::nullopt, 0, words[at].literal});
            ++at;
        }
    }
    return items;
}

std::vector<Item> Ear::Patterns::items_before_a_tail(const std::string& text) const {
    std::vector<WordRead> words;
    for (const std::string& word : words_in(text)) {
        words.push_back(read(word));
    }
    std::vector<Item> items;
    for (Item& item : items_of(words)) {
        if (item.kind == Kind::tail && !items.empty()) {
            break;
        }
        if (item.kind != Kind::skipped) {
            items.push_back(std::move(item));
        }
    }
    return items;
}

/// The texts between words that begin something new.
std::vector<std::string> Ear::Patterns::between_breaks(const std::string& part) const {
    std::vector<std::string> texts(1);
    for (const std::string_view word : split(part, " ")) {
        const std::vector<std::string> plain = words_in(word);
        const auto found =
            plain.size() == 1 ? by_first_stem.find(read(plain.front()).stem) : by_first_stem.end();
        const bool breaks_off = found != by_first_stem.end() && found->second.front().kind == Kind::breaks;
        if (breaks_off) {
            texts.emplace_back();
        } else {
            texts.back().append(texts.back().empty() ? "" : " ").append(word);
        }
    }
    return texts;
}

/// The places that a phrase is said of: those named after it and before the next phrase, or else those named
/// before it, or anywhere in the clause, or those carried over.
std::vector<Section> Ear::Patterns::places_for(const std::vector<Item>& items, std::size_t phrase,
                                               const std::vector<Section>& carried) const {
    const auto gathered = [&](std::size_t from, std::size_t end, bool up_to_next) {
        std::vector<Section> places;
        for (std::size_t at = from; at < end && !(up_to_next && items[at].kind == Kind::phrase); ++at) {
            if (items[at].kind == Kind::place) {
                const auto& sections = book.places[items[at].index].sections;
                places.insert(places.end(), sections.begin(), sections.end());
            }
        }
        return places;
    };
    for (const auto& places : {gathered(phrase + 1, items.size(), true), gathered(0, phrase, false),
                               gathered(phrase + 1, items.size(), false)}) {
        if (!places.empty()) {
            return places;
        }
    }
    return carried;
}

void Ear::Patterns::hear_phrase(const RemarkPhrase& phrase, Bend bend, bool across_a_join,
                                const std::vector<Section>& places, HeardClause& clause) const {
    // `low carbonation and astringent`: the lack is of the first alone.
    const bool lacks = bend == Bend::lack && !(phrase.unmissed && across_a_join);
    if (bend == Bend::praise || (lacks && phrase.unmissed)) {
        clause.praises = true;
        return;
    }
    const auto is_there = [&](const RemarkTarget& target) {
        return !target.section || std::find(places.begin(), places.end(), *target.section) != places.end();
    };
    const bool narrows = std::any_of(phrase.means.begin(), phrase.means.end(), is_there);
    for (const RemarkTarget& target : phrase.means) {
        HeardRemark remark{.target = target,
                           .direction = phrase.above != lacks ? Direction::above : Direction::below,
                           .check = phrase.check};
        const bool known =
            std::find(clause.remarks.begin(), clause.remarks.end(), remark) != clause.remarks.end();
        if (!known && (!narrows || is_there(target))) {
            clause.remarks.push_back(std::move(remark));
        }
    }
}

HeardClause Ear::Patterns::clause_of(std::string text, const std::vector<Item>& items,
                                     const std::vector<Section>& carried) const {
    HeardClause clause{.text = std::move(text), .remarks = {}, .praises = false, .unknown = {}};
    const bool definite =
        std::any_of(items.begin(), items.end(), [](const Item& item) { return item.kind == Kind::phrase; });
    Bend before = Bend::none;
    bool joined_since = false;
    BendingRun run;
    for (std::size_t at = 0; at < items.size(); ++at) {
        const Item& item = items[at];
        if (item.kind && run.add(*item.kind)) {
            before = run.bend();
            joined_since = false;
            clause.praises = clause.praises || (before == Bend::praise);
            continue;
        }
        joined_since = joined_since || item.kind == Kind::joins;
        if (!is_phrase(item)) {
            continue;
        }
        run = {};
        if (item.kind == Kind::vague_phrase && definite) {
            continue;
        }
        // `light` and `heavy` do not bend themselves.
        const bool bends_itself = item.kind == Kind::vague_phrase && at > 0 && bends(items[at - 1]) &&
                                  items[at - 1].literal == item.literal;
        const BendingRun after = run_after(items, at, book.phrases[item.index].above);
        const Bend bend = bends_itself ? Bend::none : before == Bend::none ? after.bend() : before;
        hear_phrase(book.phrases[item.index], bend, joined_since, places_for(items, at, carried), clause);
    }
    if (clause.remarks.empty() && !clause.praises) {
        clause.unknown = unknown_in(items);
    }
    return clause;
}

std::vector<UnknownWord> Ear::Patterns::unknown_in(const std::vector<Item>& items) const {
    std::vector<UnknownWord> unknown;
    for (const Item& item : items) {
        if (!item.kind) {
            unknown.push_back({item.literal, nearest_word(item.literal, known_words)});
        }
    }
    return unknown;
}

Ear::Ear(const RemarkBook& book) : patterns_(std::make_unique<const Patterns>(book)) {}
Ear::~Ear() = default;
Ear::Ear(Ear&&) noexcept = default;

namespace {

/// The parts of a note between marks of punctuation, each with whether a colon ends it. A point within a
/// number or a word parts nothing.
std::vector<std::pair<std::string, bool>> parts_of(const std::string& note) {
    std::vector<std::pair<std::string, bool>> parts(1);
    for (std::size_t at = 0; at < note.size(); ++at) {
        const char letter = note[at];
        const bool within = (letter == '.' || letter == ':') && at + 1 < note.size() && note[at + 1] != ' ' &&
                            note[at + 1] != '\n';
        if (std::string_view(",;.:!?()\n").find(letter) != std::string_view::npos && !within) {
            parts.back().second = letter == ':';
            parts.emplace_back();
        } else {
            parts.back().first += letter;
        }
    }
    return parts;
}

}  // namespace

std::vector<HeardClause> Ear::hear(const std::string& note) const {
    const Patterns& patterns = *patterns_;
    std::vector<HeardClause> clauses;
    std::vector<Section> carried;
    for (const auto& [part, ends_in_colon] : parts_of(note)) {
        for (const std::string& text : patterns.between_breaks(part)) {
            const std::vector<Item> items = patterns.items_before_a_tail(text);
            const bool place_alone = !items.empty() && ends_in_colon &&
                                     std::all_of(items.begin(), items.end(),
                                                 [](const Item& item) { return item.kind == Kind::place; });
            if (place_alone) {
                carried = patterns.book.places[items.front().index].sections;
            } else if (!items.empty()) {
                clauses.push_back(patterns.clause_of(text, items, carried));
            }
        }
    }
    return clauses;
}

}  // namespace entrywise

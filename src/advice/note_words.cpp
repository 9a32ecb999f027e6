#include "advice/note_words.hpp"

#include <algorithm>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/stem.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

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

/// The words from one to the last of those taken that are not taken themselves.
template <class Word>
std::vector<Word> left_out(const std::vector<Word>& words, std::size_t from,
                           const std::vector<std::size_t>& taken) {
    std::vector<Word> between;
    for (std::size_t word = from; word < taken.back(); ++word) {
        if (std::find(taken.begin(), taken.end(), word) == taken.end()) {
            between.push_back(words[word]);
        }
    }
    return between;
}

}  // namespace

bool bends(RunKind kind) {
    return kind == RunKind::negation || kind == RunKind::lack || kind == RunKind::excess ||
           kind == RunKind::praise;
}

std::vector<NotePart> parts_of(const std::string& note) {
    std::vector<NotePart> parts(1);
    for (std::size_t at = 0; at < note.size(); ++at) {
        const char letter = note[at];
        const bool within = (letter == '.' || letter == ':') && at + 1 < note.size() && note[at + 1] != ' ' &&
                            note[at + 1] != '\n';
        if (std::string_view(",;.:!?()\n").find(letter) != std::string_view::npos && !within) {
            parts.back().ends_in_colon = letter == ':';
            parts.emplace_back();
        } else {
            parts.back().text += letter;
        }
    }
    return parts;
}

NoteWords::NoteWords(const RemarkBook& book) : book_(book) {
    for (std::size_t index = 0; index < book.phrases.size(); ++index) {
        const RemarkPhrase& phrase = book.phrases[index];
        add(phrase.says, phrase.alone ? RunKind::vague_phrase : RunKind::phrase, index);
        known_words_.insert(known_words_.end(), phrase.says.begin(), phrase.says.end());
    }
    for (std::size_t index = 0; index < book.places.size(); ++index) {
        add(book.places[index].says, RunKind::place, index);
    }
    add(book.negation, RunKind::negation);
    add(book.lack, RunKind::lack);
    add(book.excess, RunKind::excess);
    add(book.praise, RunKind::praise);
    add(book.skipped, RunKind::skipped);
    add(book.joins, RunKind::joins);
    add(book.breaks, RunKind::breaks);
    add(book.tails, RunKind::tail);
    for (auto& [stem, patterns] : by_first_stem_) {
        std::stable_sort(patterns.begin(), patterns.end(), [](const Pattern& first, const Pattern& second) {
            return first.stems.size() != second.stems.size() ? first.stems.size() > second.stems.size()
                                                             : first.kind < second.kind;
        });
    }
}

void NoteWords::add(const std::vector<std::string>& says, RunKind kind, std::size_t index) {
    for (const std::string& said : says) {
        Pattern pattern{.stems = {}, .kind = kind, .index = index};
        for (const std::string& word : words_in(said)) {
            pattern.stems.push_back(read(word).stem);
        }
        if (!pattern.stems.empty()) {
            by_first_stem_[pattern.stems.front()].push_back(std::move(pattern));
        }
    }
}

NoteWords::WordRead NoteWords::read(const std::string& word) const {
    const bool as_it_is =
        std::find(book_.unstemmed.begin(), book_.unstemmed.end(), word) != book_.unstemmed.end();
    return {word, as_it_is ? '=' + word : stem_of(word)};
}

/// The longest first.
std::span<const NoteWords::Pattern> NoteWords::beginning_with(const std::string& stem) const {
    const auto found = by_first_stem_.find(stem);
    return found == by_first_stem_.end() ? std::span<const Pattern>() : std::span(found->second);
}

/// Whether a phrase of several words may have it in between: `body too full`, `finish is dry`.
bool NoteWords::is_transparent(const WordRead& word) const {
    const auto patterns = beginning_with(word.stem);
    return std::any_of(patterns.begin(), patterns.end(), [](const Pattern& pattern) {
        const bool fills = pattern.kind == RunKind::skipped || pattern.kind == RunKind::excess ||
                           pattern.kind == RunKind::lack;
        return pattern.stems.size() == 1 && fills;
    });
}

bool NoteWords::begins_a_tail(const std::vector<WordRead>& words, std::size_t at) const {
    const auto patterns = beginning_with(words[at].stem);
    return std::any_of(patterns.begin(), patterns.end(), [&](const Pattern& pattern) {
        return pattern.kind == RunKind::tail && match(pattern, words, at).has_value();
    });
}

/// Which words a pattern takes from a place on; phrases may leave out words in between.
std::optional<std::vector<std::size_t>> NoteWords::match(const Pattern& pattern,
                                                         const std::vector<WordRead>& words,
                                                         std::size_t at) const {
    const bool may_leave_out = pattern.kind == RunKind::phrase || pattern.kind == RunKind::vague_phrase;
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

/// Recognizes the longest run that begins at a word; the word after it is returned.
std::size_t NoteWords::recognize(const std::vector<WordRead>& words, std::size_t at,
                                 std::vector<WordRun>& runs) const {
    const auto candidates = beginning_with(words[at].stem);
    for (std::size_t each = 0; each < candidates.size(); ++each) {
        const Pattern& pattern = candidates[each];
        const auto taken = match(pattern, words, at);
        if (!taken) {
            continue;
        }
        // Words left out in between still bend the phrase, so they come before it.
        const std::vector<WordRun> before = recognized(left_out(words, at, *taken));
        runs.insert(runs.end(), before.begin(), before.end());
        runs.push_back({pattern.kind, pattern.index, words[at].literal});
        // `light` and `heavy` bend what they stand with, and say something themselves where nothing else
        // does.
        const auto shorter = candidates.subspan(each + 1);
        const auto vague = std::find_if(shorter.begin(), shorter.end(), [&](const Pattern& other) {
            return other.kind == RunKind::vague_phrase && other.stems == pattern.stems;
        });
        if (bends(pattern.kind) && vague != shorter.end()) {
            runs.push_back({vague->kind, vague->index, words[at].literal});
        }
        return taken->back() + 1;
    }
    runs.push_back({std::nullopt, 0, words[at].literal});
    return at + 1;
}

std::vector<WordRun> NoteWords::recognized(const std::vector<WordRead>& words) const {
    std::vector<WordRun> runs;
    std::size_t at = 0;
    while (at < words.size()) {
        at = recognize(words, at, runs);
    }
    return runs;
}

std::vector<WordRun> NoteWords::runs_of(const std::string& text) const {
    std::vector<WordRead> words;
    for (const std::string& word : words_in(text)) {
        words.push_back(read(word));
    }
    std::vector<WordRun> runs;
    for (WordRun& run : recognized(words)) {
        if (run.kind == RunKind::tail && !runs.empty()) {
            break;
        }
        if (run.kind != RunKind::skipped) {
            runs.push_back(std::move(run));
        }
    }
    return runs;
}

std::vector<std::string> NoteWords::between_breaks(const std::string& part) const {
    std::vector<std::string> texts(1);
    for (const std::string_view word : split(part, " ")) {
        const std::vector<std::string> plain = words_in(word);
        const auto patterns =
            plain.size() == 1 ? beginning_with(read(plain.front()).stem) : std::span<const Pattern>();
        if (!patterns.empty() && patterns.front().kind == RunKind::breaks) {
            texts.emplace_back();
        } else {
            texts.back().append(texts.back().empty() ? "" : " ").append(word);
        }
    }
    return texts;
}

std::string NoteWords::nearest(const std::string& word) const {
    return nearest_word(word, known_words_);
}

}  // namespace entrywise

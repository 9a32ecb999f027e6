#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "style/remark.hpp"

namespace entrywise {

/// What a run of words is to a note. Of runs of one length the first kind counts.
enum class RunKind {
    phrase,
    negation,
    lack,
    excess,
    praise,
    vague_phrase,
    place,
    joins,
    breaks,
    tail,
    skipped
};

/// Whether runs of this kind bend what they stand with.
bool bends(RunKind kind);

/// A run of words recognized, or a single word that is not.
struct WordRun {
    std::optional<RunKind> kind;
    std::size_t index = 0;  ///< of the phrase or place in its book
    std::string first_word;
};

/// The words of a note between two marks of punctuation.
struct NotePart {
    std::string text;
    bool ends_in_colon = false;
};

/// A point or colon within a number or a word parts nothing.
std::vector<NotePart> parts_of(const std::string& note);

/// Recognizes in a note the words of a book. Words are compared by their stems; of two runs that fit, the
/// longer counts; a phrase of several words may have words in between that bend it or say nothing.
class NoteWords {
  public:
    /// The book must outlive the words.
    explicit NoteWords(const RemarkBook& book);

    /// The texts between words that begin something new.
    std::vector<std::string> between_breaks(const std::string& part) const;

    /// The runs of a text in their order, without those that say nothing and what follows a tail.
    std::vector<WordRun> runs_of(const std::string& text) const;

    /// The known word nearest to one that is not known, if one is near; else empty.
    std::string nearest(const std::string& word) const;

  private:
    struct Pattern {
        std::vector<std::string> stems;
        RunKind kind = RunKind::skipped;
        std::size_t index = 0;
    };

    struct WordRead {
        std::string literal;
        std::string stem;
    };

    void add(const std::vector<std::string>& says, RunKind kind, std::size_t index = 0);
    WordRead read(const std::string& word) const;
    std::span<const Pattern> beginning_with(const std::string& stem) const;
    bool is_transparent(const WordRead& word) const;
    bool begins_a_tail(const std::vector<WordRead>& words, std::size_t at) const;
    std::optional<std::vector<std::size_t>> match(const Pattern& pattern, const std::vector<WordRead>& words,
                                                  std::size_t at) const;
    std::size_t recognize(const std::vector<WordRead>& words, std::size_t at,
                          std::vector<WordRun>& runs) const;
    std::vector<WordRun> recognized(const std::vector<WordRead>& words) const;

    const RemarkBook& book_;
    std::map<std::string, std::vector<Pattern>> by_first_stem_;
    std::vector<std::string> known_words_;
};

}  // namespace entrywise

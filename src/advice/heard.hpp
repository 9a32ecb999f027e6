#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "advice/note_words.hpp"
#include "judging/sheet.hpp"
#include "style/remark.hpp"

namespace entrywise {

/// One thing that a note says: too much or too little of what. A remark that may stand for several attributes
/// is several of these.
struct HeardRemark {
    RemarkTarget target;
    Direction direction = Direction::above;
    std::string check;  ///< of a fault of execution: where it comes from and what to look at

    friend bool operator==(const HeardRemark& first, const HeardRemark& second) {
        return first.target == second.target && first.direction == second.direction;
    }
};

/// A word that stands in no list, and the known one nearest to it, if one is near.
struct UnknownWord {
    std::string word;
    std::string nearest;
};

/// A part of a note that stands for itself: `harsh finish` of `harsh finish, hot`.
struct HeardClause {
    std::string text;
    std::vector<HeardRemark> remarks;  ///< none for praise and for what is not understood
    bool praises = false;
    std::vector<UnknownWord> unknown;  ///< told only of a clause that says nothing else
};

/// `section.attribute.direction`, as findings are named; `any.fault.above` for a fault of execution.
std::string id_of(const HeardRemark& remark);

/// Hears what judges' notes say, by the words of a book. Of two phrases that fit, the longer counts; words
/// are compared by their stems; `not`, `lacks` and the like turn a remark round; a place that the note names
/// picks among the attributes that a phrase may stand for. What a note praises it does not complain of.
/// Punctuation and words such as `but` part a note into clauses; a place alone before a colon holds for the
/// clause after it.
class Ear {
  public:
    /// The book must outlive the ear.
    explicit Ear(const RemarkBook& book) : book_(book), words_(book) {}

    std::vector<HeardClause> hear(const std::string& note) const;

  private:
    HeardClause clause_of(std::string text, const std::vector<WordRun>& runs,
                          const std::vector<Section>& carried) const;
    std::vector<Section> places_for(const std::vector<WordRun>& runs, std::size_t phrase,
                                    const std::vector<Section>& carried) const;
    std::vector<UnknownWord> unknown_in(const std::vector<WordRun>& runs) const;

    const RemarkBook& book_;
    NoteWords words_;
};

}  // namespace entrywise

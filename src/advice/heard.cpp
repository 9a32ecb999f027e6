#include "advice/heard.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "advice/bend.hpp"

namespace entrywise {

namespace {

bool is_phrase(const WordRun& run) {
    return run.kind == RunKind::phrase || run.kind == RunKind::vague_phrase;
}

/// The words that follow a phrase and bend it. `bitterness and hop flavor too low`: where things are joined,
/// what follows the last of them bends them all, as long as they are named without a judgement of their own.
BendingWords words_after(const std::vector<WordRun>& runs, std::size_t phrase, bool is_neutral) {
    BendingWords after;
    bool bent = false;
    for (std::size_t next = phrase + 1; next < runs.size(); ++next) {
        const WordRun& run = runs[next];
        const bool ends = run.kind == RunKind::joins || is_phrase(run);
        const bool joins_another =
            next + 1 < runs.size() && run.kind == RunKind::joins && is_phrase(runs[next + 1]);
        if (ends && !bent && is_neutral && joins_another) {
            ++next;
        } else if (ends) {
            break;
        } else if (run.kind) {
            bent = after.add(*run.kind) || bent;
        }
    }
    return after;
}

/// `light` and `heavy` stand twice, as what bends and as what is said, and do not bend themselves.
bool bends_itself(const std::vector<WordRun>& runs, std::size_t at) {
    return runs[at].kind == RunKind::vague_phrase && at > 0 && runs[at - 1].kind &&
           bends(*runs[at - 1].kind) && runs[at - 1].first_word == runs[at].first_word;
}

void hear_phrase(const RemarkPhrase& phrase, Bend bend, bool across_a_join,
                 const std::vector<Section>& places, HeardClause& clause) {
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

bool names_only_a_place(const std::vector<WordRun>& runs) {
    return !runs.empty() && std::all_of(runs.begin(), runs.end(),
                                        [](const WordRun& run) { return run.kind == RunKind::place; });
}

}  // namespace

std::string id_of(const HeardRemark& remark) {
    const std::string section =
        remark.target.section ? std::string(word_of(*remark.target.section)) : std::string("any");
    return section + '.' + remark.target.attribute +
           (remark.direction == Direction::above ? ".above" : ".below");
}

/// The places that a phrase is said of: those named after it and before the next phrase, or else those named
/// before it, or anywhere in the clause, or those carried over.
std::vector<Section> Ear::places_for(const std::vector<WordRun>& runs, std::size_t phrase,
                                     const std::vector<Section>& carried) const {
    const auto gathered = [&](std::size_t from, std::size_t end, bool up_to_next) {
        std::vector<Section> places;
        for (std::size_t at = from; at < end && !(up_to_next && runs[at].kind == RunKind::phrase); ++at) {
            if (runs[at].kind == RunKind::place) {
                const auto& sections = book_.places[runs[at].index].sections;
                places.insert(places.end(), sections.begin(), sections.end());
            }
        }
        return places;
    };
    for (const auto& places : {gathered(phrase + 1, runs.size(), true), gathered(0, phrase, false),
                               gathered(phrase + 1, runs.size(), false)}) {
        if (!places.empty()) {
            return places;
        }
    }
    return carried;
}

HeardClause Ear::clause_of(std::string text, const std::vector<WordRun>& runs,
                           const std::vector<Section>& carried) const {
    HeardClause clause{.text = std::move(text), .remarks = {}, .praises = false, .unknown = {}};
    const bool definite =
        std::any_of(runs.begin(), runs.end(), [](const WordRun& run) { return run.kind == RunKind::phrase; });
    Bend before = Bend::none;
    bool joined_since = false;
    BendingWords bending;
    for (std::size_t at = 0; at < runs.size(); ++at) {
        const WordRun& run = runs[at];
        if (run.kind && bending.add(*run.kind)) {
            before = bending.bend();
            joined_since = false;
            clause.praises = clause.praises || (before == Bend::praise);
            continue;
        }
        joined_since = joined_since || run.kind == RunKind::joins;
        if (!is_phrase(run)) {
            continue;
        }
        bending = {};
        if (run.kind == RunKind::vague_phrase && definite) {
            continue;
        }
        const RemarkPhrase& phrase = book_.phrases[run.index];
        const Bend after = words_after(runs, at, phrase.above).bend();
        const Bend bend = bends_itself(runs, at) ? Bend::none : before == Bend::none ? after : before;
        hear_phrase(phrase, bend, joined_since, places_for(runs, at, carried), clause);
    }
    if (clause.remarks.empty() && !clause.praises) {
        clause.unknown = unknown_in(runs);
    }
    return clause;
}

std::vector<UnknownWord> Ear::unknown_in(const std::vector<WordRun>& runs) const {
    std::vector<UnknownWord> unknown;
    for (const WordRun& run : runs) {
        if (!run.kind) {
            unknown.push_back({run.first_word, words_.nearest(run.first_word)});
        }
    }
    return unknown;
}

std::vector<HeardClause> Ear::hear(const std::string& note) const {
    std::vector<HeardClause> clauses;
    std::vector<Section> carried;
    for (const NotePart& part : parts_of(note)) {
        for (const std::string& text : words_.between_breaks(part.text)) {
            const std::vector<WordRun> runs = words_.runs_of(text);
            if (part.ends_in_colon && names_only_a_place(runs)) {
                carried = book_.places[runs.front().index].sections;
            } else if (!runs.empty()) {
                clauses.push_back(clause_of(text, runs, carried));
            }
        }
    }
    return clauses;
}

}  // namespace entrywise

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Styles that a competition judges together, under a name of its own.
struct CompetitionTable {
    std::string code;                       ///< what the competition calls it: `4`
    std::string name;                       ///< `Hoppy Ales`; may be empty
    std::vector<std::string> must_declare;  ///< what the entry form must say there beside what the styles ask
};

/// A style that a competition accepts, with all of its variants.
struct AcceptedStyle {
    StyleName name;
    std::optional<std::size_t> table;  ///< none where the style is judged by itself
};

/// What a competition accepts and asks for.
struct Competition {
    std::string name;
    std::string file;
    std::string guide;  ///< of codes that name none
    std::vector<CompetitionTable> tables;
    std::vector<AcceptedStyle> accepted;    ///< each style once, in the order of the file
    std::vector<std::string> must_declare;  ///< of every entry, beside what tables and styles ask
    std::optional<int> entries_per_brewer;  ///< at most so many
};

/// Whether a style, or the style that it is a variant of, is accepted.
bool accepts(const Competition& competition, const StyleName& style);

/// The table that a style is judged at; null where it is judged by itself or not accepted. It lasts as long
/// as the competition does.
const CompetitionTable* table_of(const Competition& competition, const StyleName& style);

/// Where a competition judges the entries of a style.
struct Seat {
    std::string competition;                ///< its name
    bool is_accepted = true;                ///< whether the competition takes the style at all
    std::optional<CompetitionTable> table;  ///< none where the style is judged by itself or not accepted
    std::vector<std::string> asks_besides;  ///< what its form must say beside what the style asks for
};

Seat seat_of(const Competition& competition, const Style& style);

/// Everything that the entry form must say of an entry in this style: what the style asks for, then its
/// table, then the competition, each once.
std::vector<std::string> declarations_asked(const Competition& competition, const Style& style);

}  // namespace entrywise

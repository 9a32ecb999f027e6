#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// Something that comes with an entry and means nothing here: it is handed on.
struct EntryColumn {
    std::string name;
    Node value;
};

/// A beer as it is handed in: what the entry form says, and the recipe or where it stands.
struct ClubEntry {
    std::string number;    ///< as the club counts, or the name of the recipe's file
    std::string brewer;    ///< empty where nobody is named
    std::string category;  ///< style's code; empty to take what the recipe declares
    std::string base;      ///< base style's code, for a style that builds on another
    std::map<std::string, std::string> declares;
    std::string recipe_file;     ///< where the recipe does not stand in the entry itself
    std::string pick;            ///< which recipe of a file that holds several
    std::optional<Node> recipe;  ///< a recipe file's document, or that of a BeerJSON file
    std::vector<EntryColumn> columns;
    Place place;                ///< of the line that says it
    std::vector<Fault> faults;  ///< what is wrong with that line

    /// Where the category stands, for faults.
    Place category_place;
};

/// Takes away all that may tell who brewed it: the name, every column that means nothing here, and the file's
/// name, in whose place the entry is told by its number.
void make_blind(ClubEntry& entry);

/// Replaces the name by `...` wherever a fault repeats it.
void make_blind(std::vector<Fault>& faults, const std::string& brewer, const std::string& file);

}  // namespace entrywise

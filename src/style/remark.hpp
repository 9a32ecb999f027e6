#pragma once

#include <optional>
#include <string>
#include <vector>

#include "style/attribute.hpp"

namespace entrywise {

/// What a remark is about: an attribute of a section, with `color` beside the sensed ones; no section for a
/// fault of execution, whose attribute is `fault`.
struct RemarkTarget {
    std::optional<Section> section;
    std::string attribute;

    friend bool operator==(const RemarkTarget&, const RemarkTarget&) = default;
};

/// Words that judges write, all for the same thing, and what they mean when nothing else is said with them.
struct RemarkPhrase {
    std::vector<std::string> says;
    std::vector<RemarkTarget> means;  ///< all that it may stand for where the note names no place
    bool above = true;                ///< too much of it; else too little
    bool unmissed = false;            ///< nobody complains that it is not there
    bool alone = false;               ///< means this only where the note says nothing more definite
    std::string check;                ///< of a fault: where it comes from and what to look at
};

/// Words that name a place on the sheet.
struct RemarkPlace {
    std::vector<std::string> says;
    std::vector<Section> sections;
};

/// Where else than in the recipe too much or too little of something comes from, and what to look at.
struct Elsewhere {
    std::vector<std::string> of;  ///< attributes by their word: `carbonation`
    bool above = true;
    std::string check;
};

/// What judges write and what it means.
struct RemarkBook {
    std::vector<RemarkPhrase> phrases;
    std::vector<RemarkPlace> places;
    std::vector<std::string> lack;      ///< turn what they stand with into too little of it
    std::vector<std::string> negation;  ///< the same, and praise before a word of excess: `not too sweet`
    std::vector<std::string> excess;
    std::vector<std::string> praise;
    std::vector<std::string> skipped;    ///< say nothing: `a`, `rather`
    std::vector<std::string> joins;      ///< stand between things of one kind: `and`
    std::vector<std::string> breaks;     ///< begin something new: `but`
    std::vector<std::string> tails;      ///< what follows is no remark of its own: `for a lager`
    std::vector<std::string> unstemmed;  ///< mean another thing than their stem: `drying`
    std::vector<Elsewhere> elsewhere;
    BySection<std::string> section_checks;  ///< what costs points in a section besides the recipe

    /// Where else too much or too little of an attribute may come from; empty where nothing is known.
    std::string elsewhere_for(const std::string& attribute, bool above) const;
};

}  // namespace entrywise

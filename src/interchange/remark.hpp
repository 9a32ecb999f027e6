#pragma once

#include <string>
#include <vector>

#include "base/place.hpp"

namespace entrywise {

/// What happened to something that a recipe could not take, or another format could not say, as it stands.
enum class RemarkKind {
    matched,   ///< a name taken for one that the tables know
    read_as,   ///< a statement that leaves its meaning open, and the meaning taken
    missing,   ///< what the file leaves out: the usual stands for it, or the standard asks for it
    left_out,  ///< what is stated and has no place, or a unit that is not known
};

/// One thing to know about a conversion, as a sentence without its full stop.
struct Remark {
    Place place;
    RemarkKind kind = RemarkKind::read_as;
    std::string text;

    friend bool operator==(const Remark&, const Remark&) = default;
};

/// `matched`, `read as`, `missing` or `left out`.
std::string name_of(RemarkKind kind);

}  // namespace entrywise

#pragma once

#include <cmath>
#include <cstdlib>
#include <iostream>
#include <string_view>

#include "base/fault.hpp"
#include "brewing/brew.hpp"
#include "reading/library.hpp"

namespace entrywise::fuzz {

/// Ends the program at once where something does not hold, so that what led there is kept.
inline void must(bool holds, std::string_view what) {
    if (!holds) {
        std::cerr << "does not hold: " << what << '\n';
        std::abort();
    }
}

/// A value, or faults that a person can read.
template <class Value>
void must_be_sound(const Outcome<Value>& outcome) {
    must(outcome || !outcome.faults.empty(), "a value or a fault");
    for (const Fault& fault : outcome.faults) {
        must(!to_line(fault).empty(), "a fault has words");
        must(fault.place.position.line >= 0 && fault.place.position.column >= 0, "a place is a place");
    }
}

/// Whatever was read as a recipe makes a beer of finite numbers.
inline void must_make_beer(const Recipe& recipe) {
    Deviates middle(1);
    const Beer beer = brew(recipe, middle);
    must(std::isfinite(beer.original_gravity.total[0].value()), "original gravity is a number");
    must(std::isfinite(beer.final_gravity[0].value()), "final gravity is a number");
    must(std::isfinite(beer.alcohol[0].value()), "alcohol is a number");
    must(std::isfinite(beer.bitterness.total[0].value()), "bitterness is a number");
    must(std::isfinite(beer.color.total[0].value()), "color is a number");
}

inline const Library& built_in() {
    static const Library library(embedded_documents());
    return library;
}

}  // namespace entrywise::fuzz

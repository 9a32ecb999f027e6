#pragma once

#include <algorithm>

#include "style/perception.hpp"
#include "style/style.hpp"

namespace entrywise {

/// For each attribute, how far a guide's word for it in a style lies from what the style's own numbers, each
/// at the middle of its range, give: positive where the numbers give more than the word says. Guides word
/// some styles by habit: a Belgian ale of nine percent is called hardly warming, an imperial stout that
/// finishes at 1.024 dry. A judge who reads the word has that very beer in mind, so a level is held against
/// the word after this is taken off. What is left lies half a step inside the words, not on their border.
/// Zero where the two agree so, and for attributes that no number decides.
ByAttribute<double> guide_habits(const Style& style, const Perception& perception);

/// A level as the guide words it, on a scale that ends at `highest`: past the first or the last word there is
/// none.
inline double worded(double level, double habit, double highest) {
    return std::min(std::max(level - habit, 0.0), highest);
}

}  // namespace entrywise

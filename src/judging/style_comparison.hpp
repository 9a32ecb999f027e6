#pragma once

#include <string>
#include <vector>

#include "judging/contrast.hpp"
#include "style/kin.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Words of two lists: those of the one alone, those of the other alone, and the rest.
struct WordsApart {
    std::vector<std::string> first_alone;
    std::vector<std::string> second_alone;
    std::vector<std::string> both;  ///< as the first list has them
};

/// Words that stand for one another by `kin` count as the same.
WordsApart words_apart(const std::vector<std::string>& first, const std::vector<std::string>& second,
                       const Kin& kin = {});

/// Two styles side by side.
struct StyleComparison {
    Style first;
    Style second;
    std::vector<Contrast> contrasts;     ///< all that both lay down, in the order of the sheet
    std::vector<Contrast> apart;         ///< what separates them, most separating first
    std::vector<Attribute> first_alone;  ///< stated by the first, while the second says nothing of it
    std::vector<Attribute> second_alone;
};

StyleComparison compared(const Style& first, const Style& second);

/// Of the traits that separate, those that no beer can meet in both styles.
std::vector<Contrast> exclusive(const StyleComparison& comparison);

}  // namespace entrywise

#pragma once

#include <string>
#include <vector>

#include "reading/library.hpp"
#include "reading/phrase_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"
#include "tests/support/palate.hpp"

namespace entrywise::testing {

// What the program itself judges by: the styles, the score sheet and the phrases that are built in.

inline const Library& usual_library() {
    static const Library library(embedded_documents());
    return library;
}

inline const ScoreSheet& usual_score_sheet() {
    static const ScoreSheet sheet =
        *read_score_sheet(*usual_library().document("styles/sheet.yaml"), "styles/sheet.yaml");
    return sheet;
}

inline const PhraseBook& usual_phrases() {
    static const PhraseBook phrases =
        *read_phrases(*usual_library().document("styles/phrases.yaml"), "styles/phrases.yaml");
    return phrases;
}

inline const Handbook& usual_handbook() {
    static const Handbook handbook{usual_score_sheet(), usual_palate(), usual_phrases()};
    return handbook;
}

/// A style of the Beer Judge Certification Program, Beer Style Guidelines, 2021.
inline Style guide_style(const std::string& code) {
    return *usual_library().style({"bjcp-2021", code});
}

/// All styles of a guide, in the order of their codes.
inline std::vector<Style> styles_of(const std::string& guide) {
    std::vector<Style> styles;
    for (const StyleName& name : usual_library().style_names(guide)) {
        styles.push_back(*usual_library().style(name));
    }
    return styles;
}

}  // namespace entrywise::testing

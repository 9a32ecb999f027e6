#include "knowledge/declared_variant.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

#include "base/text.hpp"
#include "judging/declared.hpp"

namespace entrywise {

namespace {

/// How much of what is declared the code of a variant says; nothing where it says anything else.
std::size_t words_that_fit(std::string_view variant, const std::vector<std::string>& declared) {
    const std::vector<std::string_view> words = split(variant, "-");
    const bool all_fit = std::all_of(words.begin(), words.end(), [&](std::string_view word) {
        return std::find(declared.begin(), declared.end(), word) != declared.end();
    });
    return all_fit ? words.size() : 0;
}

}  // namespace

Outcome<Style> declared_variant(Style style, const Recipe& recipe, const Library& library,
                                const std::vector<Declaration>& known) {
    if (!style.varies || recipe.declares.empty()) {
        return style;
    }
    const std::vector<std::string> declared = declared_words(recipe, style, known);
    const std::string prefix = style.code + "-";
    Style best = style;
    std::size_t most = 0;
    for (const StyleName& name : library.style_names(style.guide)) {
        const bool is_variant = name.code.starts_with(prefix);
        const std::size_t fit = is_variant ? words_that_fit(name.code.substr(prefix.size()), declared) : 0;
        if (fit == 0 || fit < most) {
            continue;
        }
        Outcome<Style> variant = library.style(name);
        if (!variant) {
            return variant;
        }
        if (fit > most || best.varies) {
            best = *std::move(variant.value);
            best.variant_of = style.code;
            most = fit;
        }
    }
    return best;
}

}  // namespace entrywise

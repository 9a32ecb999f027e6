#include "knowledge/knowledge.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/perception_reader.hpp"
#include "reading/phrase_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "reading/style_name.hpp"

namespace entrywise {

namespace {

template <class Value>
Outcome<Value> read_from(const Library& library, const std::string& path,
                         Outcome<Value> (*read)(const Node&, const std::string&)) {
    const Outcome<Node> document = library.document(path);
    return document ? read(*document, library.file_of(path)) : Outcome<Value>(document.faults);
}

}  // namespace

Outcome<Knowledge> knowledge_in(Library library) {
    auto score_sheet = read_from<ScoreSheet>(library, "styles/sheet.yaml", read_score_sheet);
    auto phrases = read_from<PhraseBook>(library, "styles/phrases.yaml", read_phrases);
    auto perception = read_from<Perception>(library, "styles/perception.yaml", read_perception);
    if (!score_sheet || !phrases || !perception) {
        std::vector<Fault> faults = score_sheet.faults;
        faults.insert(faults.end(), phrases.faults.begin(), phrases.faults.end());
        faults.insert(faults.end(), perception.faults.begin(), perception.faults.end());
        return faults;
    }
    return Knowledge{std::move(library),
                     {*std::move(score_sheet.value), *perception.value, *std::move(phrases.value)}};
}

Outcome<std::vector<Style>> styles_of(const Library& library, const std::string& guide) {
    const std::vector<StyleName> names = library.style_names(guide);
    if (names.empty()) {
        return Fault{.place = {"command line", {}},
                     .found = fmt::format("the unknown guide '{}'", guide),
                     .expected = fmt::format("one of {}, all", joined(library.guides(), ", ")),
                     .nearest = nearest_word(guide, library.guides()),
                     .remedy = {}};
    }
    std::vector<Style> styles;
    styles.reserve(names.size());
    std::vector<Fault> faults;
    for (const StyleName& name : names) {
        Outcome<Style> style = library.style(name);
        if (style) {
            styles.push_back(*std::move(style.value));
        }
        faults.insert(faults.end(), style.faults.begin(), style.faults.end());
    }
    return faults.empty() ? Outcome<std::vector<Style>>(std::move(styles))
                          : Outcome<std::vector<Style>>(std::move(faults));
}

std::vector<std::string> guides_in(const std::string& text, const Library& library) {
    std::vector<std::string> guides;
    for (const std::string_view part : split(text, ",")) {
        const std::string guide(trimmed(part));
        if (lowered(guide) == "all") {
            guides = library.guides();
            std::stable_partition(guides.begin(), guides.end(),
                                  [](const std::string& each) { return each == default_guide; });
            return guides;
        }
        if (std::find(guides.begin(), guides.end(), guide) == guides.end()) {
            guides.push_back(guide);
        }
    }
    return guides;
}

Outcome<std::vector<Style>> all_styles(const Library& library) {
    return styles_of(library, guides_in("all", library));
}

Outcome<std::vector<Style>> styles_of(const Library& library, const std::vector<std::string>& guides) {
    std::vector<Style> all;
    std::vector<Fault> faults;
    for (const std::string& guide : guides) {
        Outcome<std::vector<Style>> styles = styles_of(library, guide);
        if (styles && all.empty()) {
            all = *std::move(styles.value);
        } else if (styles) {
            std::move(styles.value->begin(), styles.value->end(), std::back_inserter(all));
        }
        faults.insert(faults.end(), styles.faults.begin(), styles.faults.end());
    }
    return faults.empty() ? Outcome<std::vector<Style>>(std::move(all))
                          : Outcome<std::vector<Style>>(std::move(faults));
}

}  // namespace entrywise

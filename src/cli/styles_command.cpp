#include <fmt/format.h>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/streams.hpp"
#include "cli/style_search.hpp"
#include "report/style_card.hpp"
#include "report/style_comparison_text.hpp"
#include "report/style_json.hpp"
#include "report/style_text.hpp"

namespace entrywise {

namespace {

/// The styles of the guides that are named, or of all.
Outcome<std::vector<Style>> styles_wanted(const Library& library, const std::string& guide) {
    if (guide.empty()) {
        return all_styles(library);
    }
    return styles_of(library, guides_in(guide, library));
}

}  // namespace

ExitStatus styles_list_command(const Call& call) {
    const Outcome<Library> library = open_library_for(call);
    if (!library) {
        return report_faults(call, library.faults);
    }
    const Outcome<std::vector<Style>> styles = styles_wanted(*library, call.guide);
    if (!styles) {
        return report_faults(call, styles.faults);
    }
    const Outcome<StylesFound> found = styles_found(*styles, call.words);
    if (!found) {
        return report_faults(call, found.faults);
    }
    if (found->words != call.words) {
        tell(fmt::format("No style holds '{}'; listed is '{}'.\n", visible(joined(call.words, " ")),
                         joined(found->words, " ")));
    }
    return deliver_or_tell(call, call.format == Format::json
                                     ? json_text(style_list_json(found->styles))
                                     : style_list_text(found->styles, text_style_for(call)));
}

ExitStatus styles_show_command(const Call& call) {
    const Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return report_faults(call, knowledge.faults);
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Style> style = style_called(knowledge->library, word);
        if (!style) {
            return style.faults;
        }
        if (!call.card && call.format == Format::text) {
            return Report{style_text(*style, text_style_for(call)), {}, ExitStatus::done};
        }
        const Outcome<std::vector<Style>> guide = styles_of(knowledge->library, style->guide);
        if (!guide) {
            return guide.faults;
        }
        const Surroundings surroundings = surroundings_of(*style, *guide);
        return call.format == Format::json
                   ? Report{{},
                            style_json(*style, surroundings, knowledge->handbook.phrases),
                            ExitStatus::done}
                   : Report{style_card(*style, surroundings, knowledge->handbook, text_style_for(call)),
                            {},
                            ExitStatus::done};
    });
}

ExitStatus styles_compare_command(const Call& call) {
    const Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return report_faults(call, knowledge.faults);
    }
    const Outcome<Style> first = style_called(knowledge->library, call.words.front());
    const Outcome<Style> second = style_called(knowledge->library, call.words.back());
    if (!first || !second) {
        std::vector<Fault> faults = first.faults;
        faults.insert(faults.end(), second.faults.begin(), second.faults.end());
        return report_faults(call, faults);
    }
    const StyleComparison comparison = compared(*first, *second);
    return deliver_or_tell(
        call, call.format == Format::json
                  ? json_text(style_comparison_json(comparison))
                  : style_comparison_text(comparison, knowledge->handbook.phrases, text_style_for(call)));
}

}  // namespace entrywise

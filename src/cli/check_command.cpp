#include <optional>
#include <utility>

#include "advice/check.hpp"
#include "base/number.hpp"
#include "cli/commands.hpp"
#include "cli/declared_variant.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "report/check_json.hpp"
#include "report/check_text.hpp"

namespace entrywise {

namespace {

/// All that checks of one call have in common.
struct Bench {
    Library library;
    ScoreSheet score_sheet;
    PhraseBook phrases;
    Perception perception;
};

Outcome<Bench> bench_for(const Call& call) {
    Outcome<Library> library = open_library_for(call);
    if (!library) {
        return library.faults;
    }
    Outcome<ScoreSheet> score_sheet = score_sheet_of(*library);
    Outcome<PhraseBook> phrases = phrases_of(*library);
    Outcome<Perception> perception = perception_of(*library);
    if (!score_sheet || !phrases || !perception) {
        std::vector<Fault> faults = score_sheet.faults;
        faults.insert(faults.end(), phrases.faults.begin(), phrases.faults.end());
        faults.insert(faults.end(), perception.faults.begin(), perception.faults.end());
        return faults;
    }
    return Bench{*std::move(library.value), *std::move(score_sheet.value), *std::move(phrases.value),
                 *std::move(perception.value)};
}

/// The style that the call names, or else the one that the recipe declares.
Outcome<Style> style_entered(const Recipe& recipe, const Call& call, const Library& library) {
    if (!call.style.empty()) {
        return style_called(library, call.style);
    }
    if (!recipe.style) {
        return Fault{.place = {recipe.file, {}},
                     .found = "no style",
                     .expected = "a line such as `style: bjcp-2021/21A`",
                     .nearest = {},
                     .remedy = "Declare it in the recipe, or name one with --style 21A."};
    }
    Outcome<Style> style = library.style(*recipe.style);
    for (Fault& fault : style.faults) {
        if (fault.place.file.empty()) {
            fault.place.file = recipe.file;
        }
    }
    return style;
}

/// That style, or the variant of it that the recipe declares.
Outcome<Style> style_for(const Recipe& recipe, const Call& call, const Bench& bench) {
    Outcome<Style> style = style_entered(recipe, call, bench.library);
    return style
               ? declared_variant(*std::move(style.value), recipe, bench.library, bench.phrases.declarations)
               : style;
}

/// The base style that the recipe declares, if it does, or the variant of it.
Outcome<std::optional<Style>> base_style_for(const Recipe& recipe, const Bench& bench) {
    if (!recipe.base_style) {
        return std::optional<Style>();
    }
    Outcome<Style> style = bench.library.style(*recipe.base_style);
    if (style) {
        Outcome<Style> variant =
            declared_variant(*std::move(style.value), recipe, bench.library, bench.phrases.declarations);
        return variant ? Outcome<std::optional<Style>>(*std::move(variant.value)) : variant.faults;
    }
    for (Fault& fault : style.faults) {
        fault.place.file = recipe.file;
        fault.found += " (base_style)";
    }
    return style.faults;
}

/// Decided on the points as they are printed.
ExitStatus status_of(const Sheet& sheet, const Call& call) {
    constexpr int printed_decimals = 1;
    const bool fails = call.fail_at && rounded(sheet.total.median, printed_decimals) >= *call.fail_at;
    return fails ? ExitStatus::findings : ExitStatus::done;
}

Outcome<Report> report_of(const Recipe& recipe, const Call& call, const Bench& bench) {
    const Outcome<Style> style = style_for(recipe, call, bench);
    if (!style) {
        return style.faults;
    }
    const Outcome<std::optional<Style>> base_style = base_style_for(recipe, bench);
    if (!base_style) {
        return base_style.faults;
    }
    const Check checked =
        check(recipe, *style, bench.score_sheet, bench.perception, bench.phrases, *base_style);
    Report report;
    report.status = status_of(checked.sheet, call);
    if (call.format == Format::json) {
        report.document = check_json(checked, bench.score_sheet);
    } else {
        report.text = check_text(checked, bench.score_sheet, text_style_for(call));
    }
    return report;
}

}  // namespace

ExitStatus check_command(const Call& call) {
    const Outcome<Bench> bench = bench_for(call);
    if (!bench) {
        return report_faults(call, bench.faults);
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Recipe> recipe = recipe_named(word, bench->library.ingredients());
        return recipe ? report_of(*recipe, call, *bench) : Outcome<Report>(recipe.faults);
    });
}

}  // namespace entrywise

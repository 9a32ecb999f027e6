#include "advice/check.hpp"

#include "advice/cause.hpp"
#include "advice/correction.hpp"
#include "advice/note.hpp"
#include "brewing/brew.hpp"
#include "brewing/deviates.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

Check check(const Recipe& recipe, const Style& style, const ScoreSheet& score_sheet,
            const Perception& perception, const PhraseBook& phrases) {
    Deviates deviates(usual_draws);
    Check result;
    result.recipe = recipe;
    result.style = style;
    result.beer = brew(recipe, deviates);
    result.profile = sense(result.beer, perception, deviates);
    result.sheet = judge(result.beer, result.profile, style, score_sheet);
    for (const Finding& finding : result.sheet.findings) {
        result.findings.push_back(
            {.finding = finding,
             .note = note_on(finding, result.beer, style, phrases),
             .causes = causes_of(finding, recipe, result.beer),
             .corrections = corrections_of(finding, recipe, result.beer, style, perception, phrases)});
    }
    result.cautions = cautions_of(recipe, result.beer);
    return result;
}

}  // namespace entrywise

#include "advice/explain.hpp"

#include <algorithm>
#include <utility>

#include "advice/cause.hpp"
#include "advice/caution_of_change.hpp"
#include "advice/correction.hpp"
#include "advice/feedback.hpp"
#include "advice/note.hpp"
#include "advice/surprise.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_behind_a_score = 3;

/// All that remarks of one recipe are traced with.
struct Bench {
    const Tasting& tasting;
    const std::optional<Style>& style;
    const Handbook& handbook;
    const RemarkBook& book;
    const Trials& trials;
    const std::vector<Surprise> surprises;
    Ear ear;
};

/// The draws in which any of the standings holds.
std::vector<bool> any_of(const std::vector<Standing>& standings) {
    std::vector<bool> any;
    for (const Standing& standing : standings) {
        any.resize(std::max(any.size(), standing.on_that_side.size()));
        for (std::size_t draw = 0; draw < standing.on_that_side.size(); ++draw) {
            any[draw] = any[draw] || standing.on_that_side[draw];
        }
    }
    return any;
}

double chance_of_any(const std::vector<Standing>& standings) {
    const std::vector<bool> any = any_of(standings);
    return any.empty() ? 0.0
                       : static_cast<double>(std::count(any.begin(), any.end(), true)) /
                             static_cast<double>(any.size());
}

const Standing& best_of(const ExplainedRemark& remark) {
    return *std::max_element(
        remark.standings.begin(), remark.standings.end(),
        [](const Standing& first, const Standing& second) { return first.explained < second.explained; });
}

/// What the recipe could do about it, where it has a part in it.
std::vector<Correction> corrections_of(const ExplainedRemark& remark, const Bench& bench) {
    const Standing& standing = best_of(remark);
    if (explains(remark.explained) == Explains::no) {
        return {};
    }
    if (standing.by_style) {
        const Perception& perception = bench.handbook.perception;
        return corrections_of(standing.finding, taste_at_middle(bench.tasting.recipe, perception),
                              bench.tasting.beer, *bench.style, perception, bench.handbook.phrases,
                              Reach::half_way_too);
    }
    return advice_in_general(standing.finding, bench.handbook.phrases);
}

std::vector<Pull> ingredients_in(std::vector<Pull> pulls) {
    std::erase_if(pulls, [](const Pull& pull) { return !pull.ingredient; });
    double all = 0.0;
    for (const Pull& pull : pulls) {
        all += pull.share;
    }
    for (Pull& pull : pulls) {
        pull.share /= all;
    }
    return pulls;
}

bool is_absent(const Finding& finding) {
    constexpr double hardly_any = 0.5;
    const auto attribute = attribute_named(finding.section, finding.attribute);
    return attribute && scale_of(*attribute) == SensoryScale::intensity && finding.level < hardly_any;
}

void trace(ExplainedRemark& remark, const Bench& bench) {
    remark.explained = chance_of_any(remark.standings);
    const Standing& standing = best_of(remark);
    const bool above = remark.direction == Direction::above;
    if (!standing.remark.target.section) {
        remark.elsewhere = standing.remark.check;
        return;
    }
    const Section section = standing.finding.section;
    const std::string& attribute = standing.finding.attribute;
    remark.settings = settings_behind(remark.attribute, bench.tasting.recipe, bench.tasting.beer);
    const std::vector<Pull> lowering = bench.trials.that_move(section, attribute, Direction::below);
    remark.relief = above ? lowering : bench.trials.that_move(section, attribute, Direction::above);
    remark.absent = !above && is_absent(standing.finding);
    remark.givers = above || remark.absent ? std::vector<Pull>() : ingredients_in(lowering);
    if (remark.absent) {
        remark.relief.clear();
    }
    remark.measured = surprise_behind(attribute, remark.direction, bench.surprises);
    const std::vector<Correction> corrections = corrections_of(remark, bench);
    remark.corrections = in_words(corrections);
    Deviates dice(usual_draws);
    remark.cautions = cautions_of_corrections(corrections, bench.tasting.recipe, bench.tasting.beer, dice);
    if (explains(remark.explained) != Explains::yes || !remark.measured.empty()) {
        remark.elsewhere = bench.book.elsewhere_for(remark.attribute, above);
    }
}

/// Puts a standing beside those on the same attribute and direction, or begins a remark with it.
void add(const Standing& standing, std::size_t clause, std::vector<ExplainedRemark>& remarks) {
    const HeardRemark& heard = standing.remark;
    const auto same = std::find_if(remarks.begin(), remarks.end(), [&](const ExplainedRemark& remark) {
        const Standing& first = remark.standings.front();
        return remark.attribute == standing.finding.attribute && remark.direction == heard.direction &&
               first.remark.check == heard.check;
    });
    if (same == remarks.end()) {
        ExplainedRemark remark;
        remark.attribute = standing.finding.attribute;
        remark.direction = heard.direction;
        remark.clause = clause;
        remark.standings = {standing};
        remarks.push_back(std::move(remark));
        return;
    }
    const bool known = std::any_of(same->standings.begin(), same->standings.end(),
                                   [&](const Standing& each) { return each.remark.target == heard.target; });
    if (!known) {
        same->standings.push_back(standing);
    }
}

ExplainedNote explained_note(const std::string& text, const Bench& bench) {
    ExplainedNote note;
    note.text = text;
    double holding = 0.0;
    std::size_t complaints = 0;
    for (HeardClause& clause : bench.ear.hear(text)) {
        std::vector<Standing> standings;
        for (const HeardRemark& remark : clause.remarks) {
            standings.push_back(standing_on(remark, bench.tasting, bench.style, bench.handbook.score_sheet));
            add(standings.back(), complaints, note.remarks);
        }
        if (!standings.empty()) {
            holding += chance_of_any(standings);
            ++complaints;
        } else if (clause.praises) {
            note.praises.push_back(clause.text);
        } else {
            note.unheard.push_back(std::move(clause));
        }
    }
    for (ExplainedRemark& remark : note.remarks) {
        trace(remark, bench);
    }
    // What explains the note better is told first.
    std::stable_sort(note.remarks.begin(), note.remarks.end(),
                     [](const ExplainedRemark& first, const ExplainedRemark& second) {
                         return first.explained > second.explained;
                     });
    if (complaints > 0) {
        note.explained = holding / static_cast<double>(complaints);
    }
    return note;
}

std::vector<ExplainedScore> explained_scores(const SectionScores& given, const Bench& bench) {
    const Verdict verdict = verdict_on(bench.tasting, *bench.style, bench.handbook);
    std::vector<ExplainedScore> scores;
    for (const ScoreComparison& comparison :
         compared_scores(given, verdict.sheet, bench.handbook.score_sheet)) {
        ExplainedScore score{.comparison = comparison, .behind = {}, .elsewhere = {}};
        for (const Finding& finding : verdict.sheet.findings) {
            const bool belongs =
                finding.section == comparison.section || comparison.section == Section::overall;
            const bool on_a_scale = finding.attribute == "color" ||
                                    attribute_named(finding.section, finding.attribute).has_value();
            if (comparison.parts && belongs && on_a_scale && score.behind.size() < most_behind_a_score) {
                score.behind.push_back(
                    note_on(finding, bench.tasting.beer, *bench.style, bench.handbook.phrases));
            }
        }
        if (comparison.parts) {
            score.elsewhere =
                *comparison.parts == Direction::below
                    ? bench.book.section_checks[comparison.section]
                    : "a beer made and kept better than most, or a judge who gives more than others";
        }
        scores.push_back(std::move(score));
    }
    return scores;
}

/// Those of the recipe, then those of what would bring in what the notes say.
std::vector<Caution> cautions_in(const Explanation& explanation, const Beer& beer) {
    std::vector<Caution> cautions = cautions_of(explanation.recipe, beer);
    for (const ExplainedNote& note : explanation.notes) {
        for (const ExplainedRemark& remark : note.remarks) {
            add_new(remark.cautions, cautions);
        }
    }
    return cautions;
}

}  // namespace

Explains explains(double explained) {
    constexpr double even = 0.5;
    constexpr double one_in_five = 0.2;
    return explained >= even ? Explains::yes : explained >= one_in_five ? Explains::perhaps : Explains::no;
}

Explanation explain(const Recipe& recipe, const std::optional<Style>& style, const JudgedBeer& judged,
                    const Handbook& handbook, const RemarkBook& remarks) {
    const Tasting tasting = taste(recipe, handbook.perception);
    const Trials trials(recipe, handbook.perception);
    const Bench bench{
        tasting, style, handbook, remarks, trials, surprises_in(recipe, handbook.perception), Ear(remarks)};
    Explanation explanation;
    explanation.recipe = recipe;
    explanation.style = style;
    for (const std::string& note : judged.notes) {
        explanation.notes.push_back(explained_note(note, bench));
    }
    if (style) {
        explanation.scores = explained_scores(judged.scores, bench);
    }
    explanation.feedback = feedback_on(explanation, handbook.phrases);
    explanation.cautions = cautions_in(explanation, tasting.beer);
    explanation.beer = tasting.beer;
    return explanation;
}

}  // namespace entrywise

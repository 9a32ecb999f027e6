#include "advice/feedback.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "advice/explain.hpp"
#include "advice/note.hpp"
#include "base/number.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr double worth_a_name = 0.15;
constexpr std::size_t most_names = 2;

struct Comparative {
    std::string_view attribute;
    std::string_view above;
    std::string_view below;
};

/// What more and less of it is called, where it is not stronger and weaker.
constexpr std::array<Comparative, 9> comparatives{{
    {"body", "fuller", "thinner"},
    {"finish", "sweeter", "drier"},
    {"clarity", "clearer", "duller"},
    {"color", "darker", "paler"},
    {"balance", "further toward bitterness", "further toward malt"},
    {"carbonation", "livelier", "flatter"},
    {"head_size", "larger", "smaller"},
    {"head_retention", "longer-lived", "shorter-lived"},
    {"creaminess", "creamier", "less creamy"},
}};

std::string_view comparative(const ExplainedRemark& remark) {
    const bool above = remark.direction == Direction::above;
    for (const Comparative& each : comparatives) {
        if (each.attribute == remark.attribute) {
            return above ? each.above : each.below;
        }
    }
    return above ? "stronger" : "weaker";
}

/// The names of what a remark concerns, those of several sections put together: `malt aroma and malt flavor`.
std::string nouns_of(const ExplainedRemark& remark, const PhraseBook& phrases) {
    std::vector<std::string> nouns;
    for (const Standing& standing : remark.standings) {
        const RemarkTarget& target = standing.remark.target;
        const Section section = target.section.value_or(Section::overall);
        nouns.push_back(phrases.phrase_for(std::string(word_of(section)), target.attribute).noun);
    }
    return listed(nouns, "and");
}

std::string perceived(const ExplainedRemark& remark, const Explanation& explanation,
                      const PhraseBook& phrases) {
    const std::string expected =
        explanation.style ? explanation.style->name + " asks for" : std::string("I expected");
    return "The " + nouns_of(remark, phrases) + " came across " + std::string(comparative(remark)) +
           " than " + expected + ".";
}

std::string of_one_remark(const ExplainedRemark& remark, const Explanation& explanation,
                          const PhraseBook& phrases) {
    if (remark.attribute == "fault") {
        return "This is no matter of the recipe. It comes from " + remark.elsewhere + ".";
    }
    std::vector<std::string> sentences{perceived(remark, explanation, phrases)};
    const Explains explained = explains(remark.explained);
    const std::string cause = likely_cause(remark);
    if (!remark.measured.empty()) {
        sentences.push_back("Its " + remark.measured + ".");
    } else if (explained != Explains::no && !cause.empty()) {
        sentences.push_back((explained == Explains::yes ? "In this recipe " : "In this recipe, perhaps, ") +
                            cause + ".");
    }
    if (!remark.corrections.empty()) {
        sentences.push_back("What would bring it in: " + remark.corrections.front() + ".");
    }
    if (!remark.elsewhere.empty()) {
        const std::string_view opening = explained == Explains::no
                                             ? "The recipe gives little reason for it. More likely: "
                                         : remark.measured.empty() ? "If that is not it: "
                                                                   : "What may be behind that: ";
        sentences.push_back(std::string(opening) + remark.elsewhere + ".");
    }
    return joined(sentences, " ");
}

/// Remarks of a note that are worth a sentence: those that the recipe explains, and of each part of the note
/// at least the likeliest, since words that may stand for several things stand for one of them.
std::vector<ExplainedRemark> to_write_of(const ExplainedNote& note) {
    std::vector<ExplainedRemark> remarks;
    for (const ExplainedRemark& remark : note.remarks) {
        const bool said = std::any_of(remarks.begin(), remarks.end(), [&](const ExplainedRemark& other) {
            return other.clause == remark.clause;
        });
        if (!said || explains(remark.explained) != Explains::no || remark.attribute == "fault") {
            remarks.push_back(remark);
        }
    }
    return remarks;
}

}  // namespace

std::string likely_cause(const ExplainedRemark& remark) {
    if (remark.absent) {
        return "nothing gives it";
    }
    std::vector<std::string> names;
    for (const Pull& pull : remark.relief) {
        if (pull.ingredient && pull.share >= worth_a_name && names.size() < most_names) {
            names.push_back(pull.source + " (" + fixed(100.0 * pull.share, 0) + " %)");
        }
    }
    if (!names.empty()) {
        const bool several = names.size() > 1;
        return remark.direction == Direction::above
                   ? "most of it comes from " + listed(names, "and")
                   : listed(names, "and") + (several ? " hold it down" : " holds it down");
    }
    return remark.settings.empty() ? std::string() : "this goes with " + remark.settings.front();
}

std::string feedback_on(const Explanation& explanation, const PhraseBook& phrases) {
    std::vector<std::string> sentences{explanation.style
                                           ? "Thank you for entering this " + explanation.style->name + "."
                                           : std::string("Thank you for sharing this beer.")};
    std::vector<std::string> praises;
    for (const ExplainedNote& note : explanation.notes) {
        praises.insert(praises.end(), note.praises.begin(), note.praises.end());
    }
    if (!praises.empty()) {
        sentences.push_back("What pleased me: " + joined(praises, "; ") + ".");
    }
    for (const ExplainedNote& note : explanation.notes) {
        std::vector<std::string> parts;
        for (const ExplainedRemark& remark : to_write_of(note)) {
            parts.push_back(of_one_remark(remark, explanation, phrases));
        }
        if (!parts.empty()) {
            sentences.push_back("I noted “" + note.text + "”. " + joined(parts, " "));
        }
    }
    if (sentences.size() == 1 && praises.empty()) {
        return {};
    }
    sentences.emplace_back("I hope that this helps with the next batch.");
    return joined(sentences, " ");
}

}  // namespace entrywise

#include "advice/kind_note.hpp"

#include <algorithm>

#include "advice/cause.hpp"
#include "base/number.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_suggestions = 2;

std::string in_words(std::vector<std::string> words) {
    for (std::string& word : words) {
        std::replace(word.begin(), word.end(), '-', ' ');
    }
    return listed(words, "and");
}

std::string subject_of(const std::string& attribute) {
    if (attribute == "hop_kind") {
        return "Hop character";
    }
    if (attribute == "malt_kind") {
        return "Malt character";
    }
    return attribute == "ester_kind" ? "The fruit of the yeast" : "The spice of the yeast";
}

std::vector<std::string> first_of(std::vector<std::string> words) {
    words.resize(std::min(words.size(), most_suggestions));
    return words;
}

/// Hops of the families that are usual for a style; empty where any are.
std::vector<std::string> usual_hops(const Style& style, const PhraseBook& phrases) {
    std::vector<std::string> hops;
    for (const std::string& family : style.custom.hops_typical) {
        const auto found = phrases.hop_families.find(family);
        if (found != phrases.hop_families.end()) {
            hops.push_back(found->second);
        }
    }
    return first_of(hops);
}

std::vector<std::string> usual_yeasts(const Style& style) {
    return first_of(style.custom.yeast_typical);
}

}  // namespace

std::string note_on_kind(const KindMiss& miss, const Style& style) {
    return subject_of(miss.finding.attribute) + " is " + in_words(miss.found) + "; " + style.name +
           " asks for " + in_words(miss.asked) + ".";
}

std::vector<std::string> causes_of_kind(const KindMiss& miss) {
    std::vector<std::string> causes;
    for (const SourceShare& source : miss.sources) {
        if (causes.size() < most_causes && source.share >= least_share_of_a_cause) {
            causes.push_back(source.ingredient + " " + fixed(100.0 * source.share, 0) + " %");
        }
    }
    return causes;
}

std::string correction_of_kind(const KindMiss& miss, const Style& style, const PhraseBook& phrases) {
    const std::string& attribute = miss.finding.attribute;
    if (attribute == "hop_kind") {
        const std::vector<std::string> hops = usual_hops(style, phrases);
        return hops.empty() ? "take late hops that smell of " + in_words(miss.asked)
                            : "take " + listed(hops, "or") + " for the late hops";
    }
    if (attribute == "malt_kind") {
        return "take a malt in its place that gives " + in_words(miss.asked);
    }
    const std::vector<std::string> yeasts = usual_yeasts(style);
    return yeasts.empty() ? "take a yeast that gives " + in_words(miss.asked)
                          : "take a yeast of the class " + listed(yeasts, "or");
}

}  // namespace entrywise

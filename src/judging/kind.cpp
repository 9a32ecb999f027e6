#include "judging/kind.hpp"

#include <algorithm>
#include <utility>

#include "style/customary.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_words = 3;

/// A smell whose words the style names to less than this share is of another kind (working values). Hops
/// carry their cultivar's words plainly; malts and yeasts are known only by class, so that but a clear miss
/// counts.
constexpr double hops_named_at_least = 0.5;
constexpr double others_named_at_least = 0.3;

/// One word of what is smelled, with its part of the whole.
struct WordShare {
    std::string word;
    double share = 0.0;
};

/// What something smells of, and where it comes from.
struct Smell {
    std::vector<WordShare> words;
    std::vector<SourceShare> sources;

    /// The words of an ingredient have equal parts in its share.
    void add(const std::vector<std::string>& descriptors, const SourceShare& source) {
        for (const std::string& word : descriptors) {
            const double part = source.share / static_cast<double>(descriptors.size());
            const auto found = std::find_if(words.begin(), words.end(),
                                            [&](const WordShare& each) { return each.word == word; });
            if (found == words.end()) {
                words.push_back({word, part});
            } else {
                found->share += part;
            }
        }
        sources.push_back(source);
    }
};

/// Hops of a family that is usual for the style smell as the style does, whatever words a cultivar is told
/// in.
bool is_usual(const Hop& hop, const Custom& custom) {
    return custom_of_hops(custom, hop.family) != Customary::seldom;
}

Smell of_hops(const Recipe& recipe, const std::vector<SourceShare>& sources, const Style& style) {
    Smell smell;
    for (const SourceShare& source : sources) {
        for (const HopAddition& addition : recipe.hops) {
            if (addition.position == source.position) {
                smell.add(is_usual(addition.hop, style.custom) ? style.hop_notes : addition.hop.descriptors,
                          source);
            }
        }
    }
    return smell;
}

Smell of_malts(const Recipe& recipe, const std::vector<SourceShare>& sources) {
    Smell smell;
    for (const SourceShare& source : sources) {
        for (const GristAddition& addition : recipe.grist) {
            if (addition.position == source.position) {
                smell.add(addition.fermentable.notes, source);
            }
        }
    }
    return smell;
}

/// A yeast that is usual for the style gives what the style is known for, the wine and dried fruit of age
/// with it.
bool is_usual(const YeastClass& yeast, const Custom& custom) {
    return custom_of_yeast(custom, yeast.name) != Customary::seldom;
}

Smell of_yeasts(const Recipe& recipe, const Style& style, std::vector<std::string> YeastClass::*notes,
                const std::vector<std::string>& asked) {
    Smell smell;
    for (const YeastAddition& addition : recipe.yeasts) {
        smell.add(is_usual(addition.yeast, style.custom) ? asked : addition.yeast.*notes,
                  {addition.yeast.name, addition.position, 1.0 / static_cast<double>(recipe.yeasts.size())});
    }
    return smell;
}

double sum_of(const std::vector<WordShare>& words) {
    double sum = 0.0;
    for (const WordShare& word : words) {
        sum += word.share;
    }
    return sum;
}

/// The chance that a judge can tell of what kind a smell is: that it is sensed in the nose or on the palate.
double chance_that_told(const Impression& beer, Attribute in_aroma, Attribute in_flavor) {
    return std::max(beer.chance_that_told(in_aroma), beer.chance_that_told(in_flavor));
}

/// How a kind is compared: by which word, from which share of named words on, at which chance that it is
/// told.
struct Comparison {
    std::string attribute;
    double named_at_least = 0.0;
    double chance_told = 0.0;
};

/// Compares with what the style asks for; what is at home in it besides is no miss. What is smelled is worked
/// out only where there is something to compare.
template <class SmellOf>
std::vector<KindMiss> compared(SmellOf smell_of, const std::vector<std::string>& asked,
                               const Comparison& comparison, const ScoreSheet& score_sheet, const Kin& kin,
                               const std::vector<std::string>& at_home = {}) {
    if (asked.empty() || comparison.chance_told < 0.5) {
        return {};
    }
    const Smell smell = smell_of();
    const double all = sum_of(smell.words);
    if (all == 0.0) {
        return {};
    }
    std::vector<WordShare> other;
    std::copy_if(
        smell.words.begin(), smell.words.end(), std::back_inserter(other), [&](const WordShare& each) {
            const auto is_like = [&](const std::string& word) { return kin.are_kin(each.word, word); };
            return std::none_of(asked.begin(), asked.end(), is_like) &&
                   std::none_of(at_home.begin(), at_home.end(), is_like);
        });
    const double other_share = sum_of(other) / all;
    if (1.0 - other_share >= comparison.named_at_least) {
        return {};
    }
    std::stable_sort(other.begin(), other.end(), [](const WordShare& first, const WordShare& second) {
        return first.share > second.share;
    });
    const double noticed = comparison.chance_told * other_share;
    KindMiss miss{.finding = {.section = Section::aroma,
                              .attribute = comparison.attribute,
                              .direction = Direction::above,
                              .noticed = noticed,
                              .points = noticed * score_sheet.other_kind},
                  .found = {},
                  .asked = asked,
                  .sources = smell.sources};
    for (std::size_t word = 0; word < std::min(other.size(), most_words); ++word) {
        miss.found.push_back(other[word].word);
    }
    miss.asked.resize(std::min(asked.size(), most_words));
    return {miss};
}

/// What a style accepts at a level that is told; a level that it does not accept is a finding of its own.
bool accepts(const Style& style, Attribute attribute) {
    const auto& expectation = style.expected[attribute];
    return !expectation || expectation->high >= Impression::told_from;
}

/// At home besides the words for malt: the fruit of the style, as nobody tells whether raisins come from dark
/// crystal malt or from yeast, and caramel or roast itself where the style has a level for it.
std::vector<std::string> at_home_of_malt(const Style& style, Attribute in_aroma, Attribute in_flavor) {
    std::vector<std::string> words = style.ester_notes;
    if (style.expected[in_aroma] || style.expected[in_flavor]) {
        words.emplace_back(word_of(in_flavor));
    }
    return words;
}

/// Caramel or roast, whichever is the stronger on the palate.
std::vector<KindMiss> of_malt(const Recipe& recipe, const Impression& beer, const Style& style,
                              const ScoreSheet& score_sheet, const Kin& kin) {
    const bool roasty = beer.is_roasty();
    const Attribute in_aroma = roasty ? Attribute::aroma_roast : Attribute::aroma_caramel;
    const Attribute in_flavor = roasty ? Attribute::flavor_roast : Attribute::flavor_caramel;
    if (!accepts(style, in_aroma) || !accepts(style, in_flavor)) {
        return {};
    }
    const Drivers& drivers = beer.beer().drivers;
    const auto smell = [&] {
        return of_malts(recipe, roasty ? drivers.roast.sources : drivers.caramel.sources);
    };
    return compared(smell, style.malt_notes,
                    {"malt_kind", others_named_at_least, chance_that_told(beer, in_aroma, in_flavor)},
                    score_sheet, kin, at_home_of_malt(style, in_aroma, in_flavor));
}

}  // namespace

std::vector<KindMiss> kind_misses(const Recipe& recipe, const Impression& beer, const Style& style,
                                  const ScoreSheet& score_sheet, const Kin& kin) {
    const auto told = [&](Attribute in_aroma, Attribute in_flavor) {
        return chance_that_told(beer, in_aroma, in_flavor);
    };
    const auto hops = [&] { return of_hops(recipe, beer.beer().drivers.hop_aroma.sources, style); };
    const auto esters = [&] { return of_yeasts(recipe, style, &YeastClass::ester_notes, style.ester_notes); };
    const auto phenols = [&] {
        return of_yeasts(recipe, style, &YeastClass::phenol_notes, style.phenol_notes);
    };
    std::vector<KindMiss> misses =
        compared(hops, style.hop_notes,
                 {"hop_kind", hops_named_at_least, told(Attribute::aroma_hop, Attribute::flavor_hop)},
                 score_sheet, kin);
    for (const auto& more : {of_malt(recipe, beer, style, score_sheet, kin),
                             compared(esters, style.ester_notes,
                                      {"ester_kind", others_named_at_least,
                                       told(Attribute::aroma_ester, Attribute::flavor_ester)},
                                      score_sheet, kin),
                             compared(phenols, style.phenol_notes,
                                      {"phenol_kind", others_named_at_least,
                                       told(Attribute::aroma_phenol, Attribute::flavor_phenol)},
                                      score_sheet, kin)}) {
        misses.insert(misses.end(), more.begin(), more.end());
    }
    return misses;
}

}  // namespace entrywise

#include "advice/corrector.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "advice/caution_of_change.hpp"

namespace entrywise {

namespace {

/// Points: the least that judges write (working value).
constexpr double worth_half_of_the_way = 0.5;

}  // namespace

Corrector::Corrector(const Check& check, const PhraseBook& phrases)
    : check_(check), phrases_(phrases), now_(taste_at_middle(check.recipe, check.profile.perception)) {}

void Corrector::correct(AdvisedFinding& advised) {
    const Finding& finding = advised.finding;
    const Asked* const before = that_mends(finding);
    const bool may_be_the_same = before == nullptr || before->finding.attribute == finding.attribute;
    const std::vector<Correction> own = may_be_the_same ? own_of(finding) : std::vector<Correction>();
    if (before != nullptr && (own.empty() || own.front().told != before->corrections.front().told)) {
        advised.mended_by = id_of(before->finding);
        advised.corrections = {fmt::format("the change for {} ({}) mends this too",
                                           spoken(before->finding.attribute),
                                           word_of(before->finding.section))};
        return;
    }
    if (const Asked* const same = half_of_the_same(finding, own)) {
        advised.corrections = in_words(same->corrections);
        return;
    }
    if (!own.empty() && own.front().recipe) {
        asked_.push_back({finding, own, taste_at_middle(*own.front().recipe, check_.profile.perception)});
    }
    advised.corrections = in_words(own);
    add_new(cautions_of_corrections(own, check_.recipe, check_.beer, dice_), cautions_);
}

const Corrector::Asked* Corrector::that_mends(const Finding& finding) const {
    const auto does_it = std::find_if(asked_.begin(), asked_.end(), [&](const Asked& asked) {
        return is_brought_in(finding, now_, asked.changed, check_.beer, check_.style,
                             check_.profile.perception);
    });
    return does_it == asked_.end() ? nullptr : &*does_it;
}

const Corrector::Asked* Corrector::half_of_the_same(const Finding& finding,
                                                    const std::vector<Correction>& own) const {
    if (own.empty() || !own.front().goes_half_way) {
        return nullptr;
    }
    const auto same = std::find_if(asked_.begin(), asked_.end(), [&](const Asked& asked) {
        return asked.finding.attribute == finding.attribute && asked.finding.direction == finding.direction &&
               asked.corrections.front().goes_half_way;
    });
    return same == asked_.end() ? nullptr : &*same;
}

std::vector<Correction> Corrector::own_of(const Finding& finding) const {
    const Reach reach = finding.points >= worth_half_of_the_way ? Reach::half_way_too : Reach::all_the_way;
    return corrections_of(finding, now_, check_.beer, check_.style, check_.profile.perception, phrases_,
                          reach);
}

}  // namespace entrywise

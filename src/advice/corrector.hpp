#pragma once

#include <string>
#include <vector>

#include "advice/caution.hpp"
#include "advice/check.hpp"
#include "advice/correction.hpp"
#include "brewing/deviates.hpp"
#include "judging/tasting.hpp"
#include "style/phrase.hpp"

namespace entrywise {

/// Finds what brings findings in that are traced to the recipe, one after the other, the dearest first. It
/// goes on with what it found before: a change that one finding asks for and that mends the next too is told
/// once. The check and the phrases must last as long as it does.
class Corrector {
  public:
    Corrector(const Check& check, const PhraseBook& phrases);

    /// Adds the change that a finding before asks for, where that does it, or one of its own. The same change
    /// to the same attribute in another section is told as it is, and where each goes half of the way only,
    /// the one that was asked for first is told for both.
    void correct(AdvisedFinding& advised);

    /// What calls for caution in the changes that it added.
    const std::vector<Caution>& cautions() const { return cautions_; }

  private:
    /// A change that a finding asks for first.
    struct Asked {
        Finding finding;
        std::vector<Correction> corrections;
        Tasting changed;
    };

    const Asked* that_mends(const Finding& finding) const;
    const Asked* half_of_the_same(const Finding& finding, const std::vector<Correction>& own) const;
    std::vector<Correction> own_of(const Finding& finding) const;

    const Check& check_;
    const PhraseBook& phrases_;
    Tasting now_;
    Deviates dice_{usual_draws};
    std::vector<Asked> asked_;
    std::vector<Caution> cautions_;
};

}  // namespace entrywise

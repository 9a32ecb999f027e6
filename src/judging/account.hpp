#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "judging/deviation.hpp"
#include "judging/sheet.hpp"
#include "judging/tariff.hpp"
#include "quantity/estimate.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// Points of one attribute in one direction, summed over the draws.
struct Tally {
    bool is_asked_for = false;  ///< whether any draw is charged for it
    double points = 0.0;
    std::optional<std::size_t> miss;  ///< which of the sheet's misses it is part of
};

/// What one deviation is expected to cost over all sections, draw by draw, before it is shared out; and what
/// of it was charged in the end.
struct Charge {
    const Deviation* deviation = nullptr;
    std::vector<double> points;  ///< empty where all is inside
    Tally above;
    Tally below;

    Tally& tally(double steps) { return steps > 0.0 ? above : below; }
};

/// Whether it is noted with each charge what of it was taken, which the points alone do not need.
enum class Noting { points_only, each_charge };

/// Adds up by section and draw what the causes of deviations cost. Tariff and deviations must last as long as
/// it does.
class Account {
  public:
    Account(const Tariff& tariff, const std::vector<Deviation>& deviations, std::size_t draws, Noting noting);

    /// Charges a cause of the sheet to its sections: in each the dearest of its charges, once for each miss
    /// that they are part of. Overall impression loses its share of what the cause takes in all sections, no
    /// more where one of them is right. Tells the charges, which are those of the attributes that show the
    /// cause and that the style describes, none where all of them are inside; they stand until the next
    /// cause.
    std::span<const Charge> take(std::size_t cause);

    /// The chance that judges notice what is charged in a direction.
    double chance_of_notice(const Cause& cause, const Charge& charge, Direction direction) const;

    /// Charges so many points to a section, whatever the draw.
    void take(Section section, double points);

    /// Points at risk in a section. Misses do not add up without limit: each takes its part of what is left.
    Estimate<double> at_risk(Section section) const;

    /// Points at risk in all sections.
    Estimate<double> at_risk() const;

  private:
    /// What of a charge is part of a miss, draw by draw; no points where nothing is.
    struct Part {
        Charge* charge;
        std::span<const double> points;
    };

    std::span<Charge> charges_of(std::size_t cause);
    void write_charge(const Deviation& deviation, const Cause& cause, Charge& charge) const;
    double most_of(Section section) const;
    void find_misses(std::span<const Charge> charges);
    void find_parts(std::optional<std::size_t> miss, std::span<Charge> charges);
    std::span<const double> points_in(std::optional<std::size_t> miss, const Charge& charge,
                                      std::vector<double>& some_draws) const;
    void take_for(std::optional<std::size_t> miss, const Cause& cause);
    void find_counted(Section section);
    void ask_for(Section section, const Cause& cause);
    std::span<const double> dearest_points();
    void take_what_is_asked(Section section);
    void take_what_is_new(Section section, std::vector<double>& charged);
    void note_what_is_taken();
    void note_with(Charge& charge) const;

    const Tariff& tariff_;
    Noting noting_;
    std::array<const Deviation*, sensed_count> deviations_{};
    BySection<std::vector<double>> left_;
    std::vector<BySection<std::vector<double>>> charged_;  ///< by miss: what was charged for it so far

    // Of one cause at a time. They are kept, as a beer has hundreds of them.
    std::vector<Charge> charges_;
    std::vector<std::optional<std::size_t>> misses_;  ///< each once; nothing stands for a miss of its own
    std::vector<Part> parts_;                         ///< of the charges, in one miss
    std::vector<std::vector<double>> some_draws_;     ///< the points of parts of charges
    std::vector<Part> counted_;                       ///< of the parts, in the section that is charged
    std::vector<double> dearest_;
    std::vector<double> asked_;      ///< of a section, by a miss
    std::vector<double> elsewhere_;  ///< what the same miss took in the sections before
};

}  // namespace entrywise

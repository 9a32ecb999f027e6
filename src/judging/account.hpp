#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "judging/deviation.hpp"
#include "judging/tariff.hpp"
#include "quantity/estimate.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// Points and notice of one attribute in one direction, summed over the draws.
struct Tally {
    double noticed = 0.0;
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

/// Adds up by section and draw what the causes cost.
class Account {
  public:
    Account(const Tariff& tariff, std::size_t draws);

    /// The charges of one cause of the sheet: those of the attributes that show it and that the style
    /// describes.
    std::vector<Charge> charges_of(std::size_t cause, const std::vector<Deviation>& deviations) const;

    /// Charges a cause to its sections, and notes with each charge what of it was taken. Overall impression
    /// loses its share of what the cause takes in all sections, no more where one of them is right.
    void take(const Cause& cause, std::vector<Charge>& charges);

    /// Counts how often judges notice what is charged, which the points do not need.
    void count_notice(const Cause& cause, Charge& charge) const;

    /// Charges so many points to a section, whatever the draw.
    void take(Section section, double points);

    /// Points at risk in a section. Misses do not add up without limit: each takes its part of what is left.
    Estimate<double> at_risk(Section section) const;

    /// Points at risk in all sections.
    Estimate<double> at_risk() const;

  private:
    Charge charge_of(const Deviation& deviation, const Cause& cause) const;
    double most_of(Section section) const;
    void take_in(Section section, const Cause& cause, std::vector<Charge>& charges,
                 std::vector<double>& elsewhere);
    double charged_before(std::size_t miss, Section section, std::size_t draw, double points);

    const Tariff& tariff_;
    BySection<std::vector<double>> left_;
    std::vector<BySection<std::vector<double>>> charged_;  ///< by miss: what was charged for it so far
};

}  // namespace entrywise

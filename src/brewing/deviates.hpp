#pragma once

#include <cstddef>
#include <deque>
#include <map>
#include <span>
#include <string>
#include <vector>

#include "quantity/estimate.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// The dice of the estimates: for every uncertain input, by its name, a column of standard normal deviates,
/// one a draw. The columns are the dimensions of a Sobol sequence, so a few hundred draws cover many inputs
/// evenly; they depend on nothing but the count of draws and the order in which inputs are first named, so
/// the same recipe gives the same bytes. Inputs beyond the dimensions of the sequence, of which there are
/// thousands, take shuffled slices.
///
/// Source of the sequence: Joe and Kuo, Constructing Sobol sequences with better two-dimensional projections,
/// SIAM Journal on Scientific Computing 30, 2008, as shipped with Boost.Random.
class Deviates {
  public:
    /// `draws` is a power of two up to 4096, or 1: the single draw at which every input has its middle value.
    explicit Deviates(std::size_t draws);

    std::size_t draws() const { return standard_normal_.size(); }

    /// The column of that input. The same name gives the same column: what is one lot varies as one. The
    /// reference stays good as long as these deviates.
    const std::vector<double>& of(const std::string& input);

    /// As if new: the next input that is named takes the first column. For working out many recipes in turn,
    /// as the columns are kept.
    void forget_inputs() { column_of_.clear(); }

    /// The uncertain quantity as draws: normal, with eight in ten within the half width, kept within the
    /// limits.
    template <class Quantity>
    Estimate<Quantity> draw(const std::string& input, const Uncertain<Quantity>& uncertain, Quantity lowest,
                            Quantity highest) {
        const std::vector<double>& deviates = of(input);
        std::vector<Quantity> values(draws(), uncertain.middle);
        for (std::size_t draw = 0; draw < values.size(); ++draw) {
            const Quantity value = uncertain.middle + uncertain.half_width * (deviates[draw] / eight_in_ten);
            values[draw] = value < lowest ? lowest : (value > highest ? highest : value);
        }
        return Estimate<Quantity>(std::move(values));
    }

    /// The standard normal deviate between whose two signs eight in ten values lie: the 90th percentile.
    static constexpr double eight_in_ten = 1.2815515655446004;

  private:
    void widen(std::size_t columns);

    std::vector<double> standard_normal_;
    std::deque<std::vector<double>> columns_;  ///< a deque, as growing it leaves its elements in place
    std::map<std::string, std::size_t> column_of_;
};

/// How many draws a beer is estimated with where nothing else is said.
inline constexpr std::size_t usual_draws = 512;

}  // namespace entrywise

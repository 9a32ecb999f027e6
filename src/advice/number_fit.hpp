#pragma once

#include <array>
#include <optional>

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// How unlikely the five numbers of a beer are among the beers of a style, against beer at large: natural
/// logarithms of odds, summed over the numbers that the style prints a closed range of; negative where they
/// are likely. The beers of a style are taken to lie evenly over its range, with borders as soft as brewers
/// keep them, and beer at large over all that is brewed: so that a tight range that the beer meets speaks
/// louder for a style than a wide one. Bitterness and color are held in steps of equal ratio.
class NumberFit {
  public:
    explicit NumberFit(const Beer& beer);

    double unlikeliness_in(const StyleRanges& ranges) const;

  private:
    /// A number on the scale that it is compared on; its width is how far it is spread and borders are soft.
    struct Told {
        double middle = 0.0;
        double width = 0.0;
    };

    std::array<Told, 5> told_;
};

}  // namespace entrywise

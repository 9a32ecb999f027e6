#pragma once

#include <array>

namespace entrywise {

/// A band of five nanometers of the spectrum: what it adds to the three stimuli of the CIE 1931 standard
/// observer, and the power of the illuminant D65 in it, which is 100 at 560 nm.
struct ObserverBand {
    int nanometers;
    double x;
    double y;
    double z;
    double daylight;
};

/// Visible light, from 380 to 780 nm. Exact, as it is a convention. Commission Internationale de l'Éclairage,
/// Colorimetry, CIE 15, 2004; ISO 11664-1 and 11664-2, 2007.
extern const std::array<ObserverBand, 81> observer_bands;

}  // namespace entrywise

#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Share of the alpha acids that hops have lost, from the hop storage index (absorbance at 275 over that at
/// 325 nm); zero at or below 0.25, the index of hops fresh from the kiln. Valid to 1.2 or so; the slope
/// differs by 6 % between crop years. Source: Nickerson & Likens, Hop storage index, Journal of the American
/// Society of Brewing Chemists 37, 1979.
Share alpha_lost_at_storage_index(double storage_index);

/// How hops are kept, from worst to best.
enum class HopPackage { open, sealed_barrier, barrier_without_oxygen };

/// Share of the alpha acids that is left after a time in store. `lost_in_six_months` is the cultivar's loss
/// in 180 days at 20 °C, in the open. The rate halves for every 15 °C colder. Valid for -20..30 °C. Real lots
/// differ by a third. Source: Garetz, Using hops, 1994; package factors from memory.
Share alpha_left_in_store(Share lost_in_six_months, Duration stored, Temperature temperature,
                          HopPackage package);

}  // namespace entrywise

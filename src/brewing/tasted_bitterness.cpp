#include "brewing/tasted_bitterness.hpp"

namespace entrywise {

namespace {

/// Humulinones against iso-alpha-acids, by weight and so nearly by reading.
constexpr double bitterness_of_oxidized = 0.66;

/// Of what pellets read after an hour's boil, 28 % comes from oxidized acids (`kettle_bitterness.hpp`).
constexpr double oxidized_in_plain_beer = 0.28;
constexpr double plain_beer = 1.0 - oxidized_in_plain_beer + bitterness_of_oxidized * oxidized_in_plain_beer;

}  // namespace

Bitterness tasted_bitterness(const BitternessRead& read) {
    return (read.of_iso_alpha_acids + bitterness_of_oxidized * read.of_oxidized_acids) / plain_beer;
}

}  // namespace entrywise

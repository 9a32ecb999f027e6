#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// What the laboratory reads of the hops in a beer, by what gives the reading.
struct BitternessRead {
    Bitterness of_iso_alpha_acids;
    Bitterness of_oxidized_acids;  ///< from kettle and dry hops, with what else absorbs as they do
};

/// The bitterness on the tongue, in IBU of a beer of the same bitterness that was hopped plainly, with
/// pellets boiled for an hour: as brewers and style guides have it in mind. Oxidized acids read nearly as
/// much as iso-alpha-acids and taste two thirds as bitter, so that late and dry hops taste less bitter than
/// they read. Malt reads a little and tastes of nothing here. Error: 15 % of what oxidized acids add.
/// Source: Algazzali & Shellhammer, Bitterness intensity of oxidized hop acids, Journal of the American
/// Society of Brewing Chemists 74, 2016.
Bitterness tasted_bitterness(const BitternessRead& read);

}  // namespace entrywise

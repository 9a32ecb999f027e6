#pragma once

#include "brewing/beer.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// Two finished beers poured together by volume, draw by draw; both have the same count of draws. Gravities,
/// bitterness, color and whatever is dissolved mix by volume; that alcohol and water shrink a little in
/// mixing is left out (below 0.1 % of the volume in beer, common practice). The blend is carbonated, settled
/// and filtered as the first beer is. What yeast and bacteria gave is told in levels, which mix as the
/// amounts behind them do, a step standing for twice the amount (working value). Sources keep their share,
/// the second beer's with positions of their own (see `second_beer_lines`).
Beer blended(const Beer& first, const Beer& second, Share of_second);

/// The beer with so much of it made up of deaerated water at the same carbonation.
Beer diluted(const Beer& beer, Share of_water);

/// Lines of the second recipe of a blend count on from here, so that no two positions are the same.
inline constexpr int second_beer_lines = 1000000;

/// The same position as one of the second beer's.
Position in_second_beer(Position position);

}  // namespace entrywise

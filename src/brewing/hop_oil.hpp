#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Volume of hop oil in a volume of beer, as the trade writes it. A dry hop of 1.5 mL/hL is a common
/// yardstick.
inline constexpr Share milliliter_per_hectoliter = 1e-5 * whole;

/// Oil in an addition of hops, by mass in a volume of beer.
Share oil_dose(Concentration hops, OilContent oil);

// The share of an addition's oil that still speaks in the glass. The literature holds no table of it by
// minute; these are working values that keep its order: 60 < 20 < 10 < 0 min < whirlpool < dry hop. Use them
// for comparison only. Source of the order: Kappler et al., Journal of the Institute of Brewing, 2011 (traces
// after 60..90 min); Hosom, web reports, 2015..2020 (ten minutes more are just noticed).

/// After a boil of this length, 0 min for hops added at flame-out into a wort that is left to stand hot or
/// chilled.
Share oil_left_after_boil(Duration boil);

/// The same for what is tasted rather than smelled: it fades more slowly, so that hops of 15 to 30 min are
/// flavor hops (common practice).
Share hop_flavor_left_after_boil(Duration boil);

/// After a stand at a temperature: cooler stands and, to half an hour, longer ones keep more. Valid
/// for 60..100 °C.
Share oil_left_after_whirlpool(Duration stand, Temperature temperature);

/// From a dry hop that is part of `all_dry_hops`. Extraction is nearly complete after a day and falls with
/// the rate. That aroma hardly rises beyond 800 g/hL is for the most part the nose's doing
/// (`hop_aroma_level`). Source: Lafontaine & Shellhammer, Impact of static dry-hopping rate on the sensory
/// and analytical profiles of beer, Journal of the Institute of Brewing 124, 2018; course of extraction:
/// Wolfe, thesis on dry-hop extraction, 2012.
Share oil_won_by_dry_hop(Concentration all_dry_hops, Duration contact);

/// Share of a beer's hop aroma and flavor that is left after keeping it this long: half after 75 days at 20
/// °C, two and a half times as slow for each 10 °C colder (common practice of packaging hoppy beer: two to
/// three months warm; the figures are working values).
Share hop_oil_left_after_keeping(Duration age, Temperature temperature);

}  // namespace entrywise

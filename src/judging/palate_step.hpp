#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// How far a number must go beyond a limit to be told from it, from memory of a style and without a second
/// glass: one step of the palate, which grows with the limit where the sense is one of shares. Working
/// values; side by side a palate and an eye do better (for alcohol: Yu and Pickering, Ethanol difference
/// thresholds in wine and the influence of mode of evaluation and wine style, American Journal of Enology and
/// Viticulture 59, 2008; for color: de Lange, Color, in Bamforth (ed.), Brewing Materials and Processes,
/// 2016).
Bitterness palate_step(Bitterness limit);
AlcoholByVolume palate_step(AlcoholByVolume limit);
Color palate_step(Color limit);

/// Beyond this color all is black to the eye (working value).
inline constexpr Color black_from = 35.0 * srm;

/// How many such steps lie between nothing and this much of it, so that the difference of two places is how
/// far apart two numbers are to the palate. Nothing of a gravity is that of water. Gravities are sensed only
/// through what they bring: the final one as weight and sweetness, a step for every 0.004, the original one
/// by the alcohol that it becomes, of which a step takes 0.008 (working values).
double palate_steps_of_original_gravity(SpecificGravity original_gravity);
double palate_steps_of_final_gravity(SpecificGravity final_gravity);
double palate_steps(AlcoholByVolume alcohol);
double palate_steps(Bitterness bitterness);
double palate_steps(Color color);

}  // namespace entrywise

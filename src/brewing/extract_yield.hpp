#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Extract that an addition gives to the wort. `fine_grind_extract` is on dry basis; a coarse-grind figure
/// already holds the mill's share of the loss and must not be lowered for it again. `efficiency` is that of
/// the brewhouse for what is mashed, and one for sugars, syrups and malt extract, which dissolve whole.
/// Uncertain by the efficiency (5 % relative, working value). Source: common practice; Noonan, New Brewing
/// Lager Beer, 1996.
Mass extract_yield(Mass addition, Share fine_grind_extract, Share moisture, Share efficiency);

/// Extract dissolved in a volume (at 20 °C) of wort or unfermented must of this gravity. Valid as
/// `extract_of`.
Mass extract_mass(Volume volume, SpecificGravity gravity);

/// The gravity of a volume (at 20 °C) of wort that holds this much extract, to 1e-8. Valid for 0..40 °P; no
/// volume gives not-a-number. Boiling and dilution change the volume only, so that this also serves for them.
SpecificGravity gravity_of_extract(Mass extract, Volume volume);

}  // namespace entrywise

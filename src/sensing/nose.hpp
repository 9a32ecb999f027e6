#pragma once

#include "style/attribute.hpp"

namespace entrywise {

/// How strongly the nose finds what grain and acid give, over how the palate does; one for all others. The
/// ratios of the mean levels of aroma and flavor over the styles that describe both. Source: Beer Judge
/// Certification Program, Beer Style Guidelines, 2021, as coded in styles/bjcp-2021.
double share_in_the_nose(Attribute attribute);

}  // namespace entrywise

#include "quantity/quantities.hpp"

using namespace entrywise;

Attenuation same(Attenuation attenuation);

#ifdef ENTRYWISE_ALLOWED
Attenuation attenuation = same(0.75 * fully_attenuated);
#else
Attenuation attenuation = same(5.0 * percent_by_volume);
#endif

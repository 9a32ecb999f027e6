#include "quantity/quantities.hpp"

using namespace entrywise;

Attenuation same(Attenuation attenuation);

#ifdef ENTRYWISE_ALLOWED
Attenuation attenuation = same(0.75 * fully_attenuated);
#else
Attenuation attenuation = same(75.0 * percent);
#endif

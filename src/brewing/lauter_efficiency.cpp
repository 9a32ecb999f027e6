#include "brewing/lauter_efficiency.hpp"

namespace entrywise {

Share lauter_efficiency(Mass grain, std::span<const Volume> run_offs, Absorption absorption) {
    const Volume held = grain * absorption;
    double left = 1.0;
    for (const Volume& run_off : run_offs) {
        left *= held / (held + run_off);
    }
    return (1.0 - left) * whole;
}

}  // namespace entrywise

#include "report/fault_text.hpp"

namespace entrywise {

std::string fault_text(const std::vector<Fault>& faults) {
    std::string text;
    for (const Fault& fault : faults) {
        text += to_line(fault) + '\n';
    }
    return text;
}

}  // namespace entrywise

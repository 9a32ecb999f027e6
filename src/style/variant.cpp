#include "style/variant.hpp"

namespace entrywise {

std::string entered_code(const std::string& code) {
    const std::size_t dash = code.find('-');
    const bool is_variant =
        dash != std::string::npos && dash + 1 < code.size() && (code[dash + 1] < '0' || code[dash + 1] > '9');
    return is_variant ? code.substr(0, dash) : code;
}

}  // namespace entrywise

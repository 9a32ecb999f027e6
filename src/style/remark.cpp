#include "style/remark.hpp"

#include <algorithm>

namespace entrywise {

std::string RemarkBook::elsewhere_for(const std::string& attribute, bool above) const {
    const auto found = std::find_if(elsewhere.begin(), elsewhere.end(), [&](const Elsewhere& each) {
        return each.above == above && std::find(each.of.begin(), each.of.end(), attribute) != each.of.end();
    });
    return found == elsewhere.end() ? std::string() : found->check;
}

}  // namespace entrywise

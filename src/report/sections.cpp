#include "report/sections.hpp"

#include <algorithm>

namespace entrywise {

std::string_view title_of(Section section) {
    return section == Section::overall ? "overall impression" : word_of(section);
}

std::string spoken(std::string_view attribute_word) {
    std::string result(attribute_word);
    std::replace(result.begin(), result.end(), '_', ' ');
    return result == "dms" ? "DMS" : result;
}

}  // namespace entrywise

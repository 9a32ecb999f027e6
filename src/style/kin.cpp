#include "style/kin.hpp"

#include <algorithm>

namespace entrywise {

bool are_kin(const std::string& first, const std::string& second, const Kin& kin) {
    const auto holds = [](const std::vector<std::string>& words, const std::string& word) {
        return std::find(words.begin(), words.end(), word) != words.end();
    };
    return first == second || std::any_of(kin.begin(), kin.end(), [&](const std::vector<std::string>& words) {
               return holds(words, first) && holds(words, second);
           });
}

}  // namespace entrywise

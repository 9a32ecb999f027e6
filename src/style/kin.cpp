#include "style/kin.hpp"

#include <algorithm>
#include <utility>

namespace entrywise {

Kin::Kin(std::vector<std::vector<std::string>> lists) : lists_(std::move(lists)) {
    for (std::size_t list = 0; list < lists_.size(); ++list) {
        for (const std::string& word : lists_[list]) {
            lists_of_[word].push_back(list);
        }
    }
}

Kin::Kin(std::initializer_list<std::vector<std::string>> lists)
    : Kin(std::vector<std::vector<std::string>>(lists)) {}

bool Kin::are_kin(const std::string& first, const std::string& second) const {
    if (first == second) {
        return true;
    }
    const auto one = lists_of_.find(first);
    const auto other = lists_of_.find(second);
    return one != lists_of_.end() && other != lists_of_.end() &&
           std::any_of(one->second.begin(), one->second.end(), [&](std::size_t list) {
               return std::binary_search(other->second.begin(), other->second.end(), list);
           });
}

}  // namespace entrywise

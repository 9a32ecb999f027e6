#include "screening/entry.hpp"

#include "base/text.hpp"

namespace entrywise {

namespace {

/// Every place of a name in the text replaced, case aside.
std::string without(const std::string& text, const std::string& name) {
    if (name.empty()) {
        return text;
    }
    const std::string searched = lowered(text);
    const std::string wanted = lowered(name);
    std::string result;
    std::size_t at = 0;
    for (std::size_t found = searched.find(wanted); found != std::string::npos;
         found = searched.find(wanted, at)) {
        result += text.substr(at, found - at) + "...";
        at = found + wanted.size();
    }
    return result + text.substr(at);
}

}  // namespace

void make_blind(ClubEntry& entry) {
    entry.brewer.clear();
    entry.columns.clear();
}

void make_blind(std::vector<Fault>& faults, const std::string& brewer, const std::string& file) {
    for (Fault& fault : faults) {
        fault.place.file = file;
        for (std::string* const text : {&fault.found, &fault.expected, &fault.nearest, &fault.remedy}) {
            *text = without(*text, brewer);
        }
    }
}

}  // namespace entrywise

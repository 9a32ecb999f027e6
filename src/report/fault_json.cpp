#include "report/fault_json.hpp"

namespace entrywise {

namespace {

Json known(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

Json one_fault(const Fault& fault) {
    Json result;
    result["file"] = fault.place.file;
    result["line"] = json_line(fault.place.position.line);
    result["column"] = json_line(fault.place.position.column);
    result["found"] = fault.found;
    result["expected"] = fault.expected;
    result["nearest"] = known(fault.nearest);
    result["remedy"] = known(fault.remedy);
    return result;
}

}  // namespace

Json fault_json(const std::vector<Fault>& faults) {
    Json document;
    document["format"] = "entrywise/fault/1";
    document["faults"] = fault_list_json(faults);
    return document;
}

Json fault_list_json(const std::vector<Fault>& faults) {
    Json list = Json::array();
    for (const Fault& fault : faults) {
        list.push_back(one_fault(fault));
    }
    return list;
}

}  // namespace entrywise

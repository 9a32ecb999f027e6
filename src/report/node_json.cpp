#include "report/node_json.hpp"

namespace entrywise {

namespace {

Json scalar_json(const Node& node) {
    constexpr bool throws = false;
    const Json value = node.quoted ? Json() : Json::parse(node.text, nullptr, throws);
    return node.quoted || value.is_discarded() ? Json(node.text) : value;
}

}  // namespace

Json node_json(const Node& node) {
    if (node.kind == NodeKind::scalar) {
        return scalar_json(node);
    }
    Json result = node.kind == NodeKind::list ? Json::array() : Json::object();
    for (const Node& item : node.items) {
        result.push_back(node_json(item));
    }
    for (const auto& [key, position, value] : node.entries) {
        result[key] = node_json(value);
    }
    return result;
}

}  // namespace entrywise

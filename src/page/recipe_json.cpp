#include "page/recipe_json.hpp"

namespace entrywise {

Json page_json(const Node& document) {
    if (document.kind == NodeKind::scalar) {
        return document.text;
    }
    Json result = document.kind == NodeKind::list ? Json::array() : Json::object();
    for (const Node& item : document.items) {
        result.push_back(page_json(item));
    }
    for (const auto& [key, position, value] : document.entries) {
        result[key] = page_json(value);
    }
    return result;
}

}  // namespace entrywise

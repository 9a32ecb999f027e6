#include "style/customary.hpp"

#include <algorithm>

namespace entrywise {

namespace {

using Texts = std::vector<std::string>;

bool holds(const Texts& texts, const std::string& text) {
    return std::find(texts.begin(), texts.end(), text) != texts.end();
}

}  // namespace

Customary custom_of_yeast(const Custom& custom, const std::string& yeast_class) {
    if (holds(custom.yeast_typical, yeast_class)) {
        return Customary::usual;
    }
    return holds(custom.yeast_possible, yeast_class) ? Customary::possible : Customary::seldom;
}

Customary custom_of_hops(const Custom& custom, const std::string& family) {
    const auto takes = [&](const Texts& families) {
        return holds(families, family) || holds(families, "any");
    };
    if (takes(custom.hops_typical)) {
        return Customary::usual;
    }
    return takes(custom.hops_possible) ? Customary::possible : Customary::seldom;
}

}  // namespace entrywise

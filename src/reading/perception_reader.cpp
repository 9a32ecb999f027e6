#include "reading/perception_reader.hpp"

#include "base/text.hpp"
#include "reading/fields.hpp"

namespace entrywise {

namespace {

void read_map(Fields& maps, const FittedMap& map, Perception& perception) {
    const Node* node = maps.need(map.name);
    if (node == nullptr) {
        return;
    }
    Fields fields(*node, "the constants of a map", maps.faults());
    for (const MapConstant& constant : map.constants) {
        constant.of(perception) = fields.required<double>(constant.name);
    }
    const auto error = fields.required<double>("error");
    for (const Attribute attribute : map.attributes) {
        perception.error[attribute] = error;
    }
    fields.refuse_others();
}

}  // namespace

Outcome<Perception> read_perception(const Node& document, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "a perception file", faults);
    Perception perception;
    if (check_format(fields, "perception")) {
        if (const Node* node = fields.need("maps")) {
            Fields maps(*node, "the maps", faults);
            for (const FittedMap& map : fitted_maps()) {
                read_map(maps, map, perception);
            }
            maps.refuse_others();
        }
        fields.refuse_others();
    }
    return faults.empty() ? Outcome<Perception>(perception) : Outcome<Perception>(faults.in_order());
}

}  // namespace entrywise

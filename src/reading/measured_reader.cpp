#include "reading/measured_reader.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "quantity/text.hpp"
#include "reading/fields.hpp"

namespace entrywise {

namespace {

constexpr std::string_view gravity_rule = "a final gravity not above the original gravity";
constexpr std::string_view gravity_remedy = "Check whether the two are exchanged.";

bool gravities_fit(const Measured& measured) {
    return !measured.original_gravity || !measured.final_gravity ||
           measured.final_gravity->middle <= measured.original_gravity->middle;
}

/// The unit of a bare number.
std::string_view unit_of(std::string_view key) {
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 4> units{
        {{"bitterness", " IBU"}, {"color", " SRM"}, {"alcohol", " %"}, {"carbonation", " vol"}}};
    const auto* found =
        std::find_if(units.begin(), units.end(), [&](const auto& unit) { return unit.first == key; });
    return found == units.end() ? std::string_view() : found->second;
}

Node map_of(const std::vector<std::string>& texts, FaultLog& faults) {
    Node map;
    map.kind = NodeKind::map;
    for (const std::string& text : texts) {
        for (const std::string_view pair : split(text, ",")) {
            const std::size_t equals = pair.find('=');
            const std::string key(trimmed(pair.substr(0, equals)));
            const std::string value(equals == std::string_view::npos ? "" : trimmed(pair.substr(equals + 1)));
            if (key.empty() || value.empty()) {
                faults.add({}, {.found = in_quotes(pair),
                                .expected = "a key and its value, such as final_gravity=1.011"});
                continue;
            }
            const bool is_bare = number_from(value).has_value();
            Node node;
            node.text = is_bare ? value + std::string(unit_of(key)) : value;
            std::erase_if(map.entries, [&](const Entry& entry) { return entry.key == key; });
            map.entries.push_back({key, {}, std::move(node)});
        }
    }
    return map;
}

template <class Value>
void take_if_left_out(std::optional<Value>& value, const std::optional<Value>& other) {
    if (!value) {
        value = other;
    }
}

}  // namespace

Measured read_measured(const Node& node, FaultLog& faults) {
    Fields fields(node, "what was measured", faults);
    Measured measured;
    measured.original_gravity = fields.optional<Uncertain<SpecificGravity>>("original_gravity");
    measured.final_gravity = fields.optional<Uncertain<SpecificGravity>>("final_gravity");
    measured.bitterness = fields.optional<Uncertain<Bitterness>>("bitterness");
    measured.color = fields.optional<Uncertain<Color>>("color");
    measured.alcohol = fields.optional<Uncertain<AlcoholByVolume>>("alcohol");
    measured.carbonation = fields.optional<Uncertain<Carbonation>>("carbonation");
    fields.refuse_others();
    if (!gravities_fit(measured)) {
        const Node* final_gravity = value_of(node, "final_gravity");
        faults.add(final_gravity->position, {.found = shown(*final_gravity),
                                             .expected = std::string(gravity_rule),
                                             .remedy = std::string(gravity_remedy)});
    }
    return measured;
}

Outcome<Measured> read_measured(const std::vector<std::string>& texts, const std::string& file) {
    FaultLog faults(file);
    const Node map = map_of(texts, faults);
    const Measured measured = read_measured(map, faults);
    if (!faults.empty()) {
        return faults.in_order();
    }
    return measured;
}

Outcome<Measured> measured_over(const Measured& first, const Measured& second, const std::string& file) {
    Measured both = first;
    take_if_left_out(both.original_gravity, second.original_gravity);
    take_if_left_out(both.final_gravity, second.final_gravity);
    take_if_left_out(both.bitterness, second.bitterness);
    take_if_left_out(both.color, second.color);
    take_if_left_out(both.alcohol, second.alcohol);
    take_if_left_out(both.carbonation, second.carbonation);
    if (!gravities_fit(both)) {
        return Fault{.place = {file, {}},
                     .found = "a final gravity of " + to_text(both.final_gravity->middle) +
                              " on an original gravity of " + to_text(both.original_gravity->middle),
                     .expected = std::string(gravity_rule),
                     .nearest = {},
                     .remedy = std::string(gravity_remedy)};
    }
    return both;
}

}  // namespace entrywise

#include "report/measured.hpp"

#include <fmt/format.h>

#include <vector>

#include "base/text.hpp"

namespace entrywise {

std::string measured_words(const Measured& measured) {
    std::vector<std::string> names;
    const auto add = [&names](bool is_measured, const char* name) {
        if (is_measured) {
            names.emplace_back(name);
        }
    };
    add(measured.original_gravity.has_value(), "original gravity");
    add(measured.final_gravity.has_value(), "final gravity");
    add(measured.alcohol.has_value(), "alcohol");
    add(measured.bitterness.has_value(), "bitterness");
    add(measured.color.has_value(), "color");
    add(measured.carbonation.has_value(), "carbonation");
    return names.empty() ? std::string() : fmt::format("Measured, not estimated: {}.", listed(names, "and"));
}

std::string measured_text(const Measured& measured, const TextStyle& style) {
    const std::string words = measured_words(measured);
    return words.empty() ? words : paragraph(words, 0, 0, style);
}

}  // namespace entrywise

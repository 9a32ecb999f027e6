#include <variant>

#include "quantity/text.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

namespace {

/// What was read is written so that it reads back as the same value.
template <class Quantity>
void read_as(std::string_view bytes) {
    const Parsed<Quantity> read = quantity_from<Quantity>(bytes);
    if (const auto* const quantity = std::get_if<Quantity>(&read)) {
        const Parsed<Quantity> again = quantity_from<Quantity>(to_text(*quantity));
        const auto* const same = std::get_if<Quantity>(&again);
        must(same != nullptr, "what is written can be read");
        const double value = quantity->value();
        must(std::abs(same->value() - value) <= 1e-9 * std::abs(value) + 1e-12,
             "it reads back as the same value");
    } else {
        must(!std::get<TextFault>(read).expected.empty(), "a fault says what was expected");
    }
    const auto uncertain = uncertain_from<Quantity>(bytes);
    if (const auto* const value = std::get_if<Uncertain<Quantity>>(&uncertain)) {
        must(value->half_width.value() >= 0.0, "no spread is below zero");
    }
    const auto span = open_span_from<Quantity>(bytes);
    if (const auto* const ends = std::get_if<OpenSpan<Quantity>>(&span)) {
        must(ends->low || ends->high, "a span has an end");
        must(!ends->low || !ends->high || *ends->low <= *ends->high, "the low end is the low one");
    }
}

}  // namespace

void read_quantity(std::string_view bytes) {
    read_as<Mass>(bytes);
    read_as<Volume>(bytes);
    read_as<Duration>(bytes);
    read_as<Temperature>(bytes);
    read_as<Concentration>(bytes);
    read_as<EvaporationRate>(bytes);
    read_as<OilContent>(bytes);
    read_as<SpecificGravity>(bytes);
    read_as<Extract>(bytes);
    read_as<AlcoholByVolume>(bytes);
    read_as<Attenuation>(bytes);
    read_as<Bitterness>(bytes);
    read_as<Color>(bytes);
    read_as<MaltColor>(bytes);
    read_as<Carbonation>(bytes);
    read_as<Share>(bytes);
    read_as<PitchRate>(bytes);
}

}  // namespace entrywise::fuzz

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "quantity/quantities.hpp"
#include "quantity/units.hpp"

namespace entrywise {

/// Why a text is no quantity: what would have been one, the unit meant if one is near, and how to mend it.
struct TextFault {
    std::string expected;
    std::string nearest;
    std::string remedy;
};

template <class Value>
using Parsed = std::variant<Value, TextFault>;

/// A number with its unit: `5.2 kg`, `30g`, `4 lb 6 oz`, `1 h 30 min`, `150 F`, `1.062`, `12 °P` (also as a
/// specific gravity), `150 EBC` (malt or beer color), `72 %`, `2.5 vol`, `3.5 L/h`, `1.2 mL/100g`. Units are
/// case-sensitive only where case tells two apart (L for liter or Lovibond is told apart by the kind); `º`
/// stands for `°`. A missing or unknown unit, a value outside the physical span of its kind, and a number
/// that `number_from` refuses are faults.
template <class Quantity>
Parsed<Quantity> quantity_from(std::string_view text);

/// A quantity with its spread: `5.5 +- 0.4 %`, `5.5 ± 0.4 %`, `5.0..6.0 %`, with the unit after the last
/// number; or a single value, whose half width is then zero. `+/-` is read too. A span `low..high` gives its
/// middle and half its width. The half width may have a unit of its own, and so may each end; one without
/// takes that of the other. A half width below zero and a low end above the high one are faults.
template <class Quantity>
Parsed<Uncertain<Quantity>> uncertain_from(std::string_view text);

/// A span of values: `1.048..1.056`, `40..70 IBU`; a single value is a span of no width.
template <class Quantity>
Parsed<Span<Quantity>> span_from(std::string_view text);

/// A span of which an end may be open, or excluded: a style that says at most 5 IBU has no low end.
template <class Quantity>
struct OpenSpan {
    std::optional<Quantity> low;
    std::optional<Quantity> high;
    /// Whether the high end itself lies outside: `3..<5 %`.
    bool below_high = false;
};

/// A span with at least one end: `1.048..1.056`, `40..70 IBU`, `8.. %`, `..5 IBU`, `3..<5 %`, `..<5 %`; a
/// single value is a span of no width.
template <class Quantity>
Parsed<OpenSpan<Quantity>> open_span_from(std::string_view text);

/// The quantity in the unit preferred for its size, or in the named spelling, as the shortest text that reads
/// back as the same value to within one part in 1e12: `5.2 kg`, `300 g`, `1.062`, `38 IBU`. The preferred
/// unit is also taken for a spelling that the kind does not have or that cannot write the value (EBC for a
/// malt below 0.56 °L).
template <class Quantity>
std::string to_text(Quantity quantity, std::string_view spelling = {});

/// The quantity with its spread, as `uncertain_from` reads it: `5.5 +- 0.4 %`; no spread is written where
/// none is.
template <class Quantity>
std::string to_text(const Uncertain<Quantity>& uncertain, std::string_view spelling = {});

/// The span as `open_span_from` reads it: `40..70 IBU`. At least one end must be there.
template <class Quantity>
std::string to_text(const OpenSpan<Quantity>& span, std::string_view spelling = {});

}  // namespace entrywise

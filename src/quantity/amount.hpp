#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "quantity/text.hpp"
#include "quantity/units.hpp"

namespace entrywise {

/// A number with the unit it was written in; no unit where none was written.
struct Term {
    double number = 0.0;
    const UnitSpelling* unit = nullptr;
};

/// An amount as written: one term, or several in falling units that add up (`4 lb 6 oz`).
struct Amount {
    std::vector<Term> terms;

    const UnitSpelling* unit() const { return terms.front().unit; }
};

/// Takes a text apart into numbers and units. A number alone is an amount without unit, here for every kind:
/// the unit may stand behind a number further on.
Parsed<Amount> amount_from(const QuantityKind& kind, std::string_view text);

/// The canonical value of an amount, in the unit given if it has none itself. A missing unit and a value that
/// is not physical are faults.
Parsed<double> canonical_of(const QuantityKind& kind, const Amount& amount, const UnitSpelling* unit_if_none);

/// The canonical half width around a canonical middle, never negative.
Parsed<double> half_width_of(const QuantityKind& kind, const Amount& amount, double middle);

/// What is expected where no quantity of the kind was found: `a mass with its unit (kg, g, lb, oz)`.
std::string with_its_unit(const QuantityKind& kind);

/// The shortest decimal number that reads back, in the unit, as the same canonical value to within 1e-12.
std::string number_in(const UnitSpelling& unit, double canonical);

/// The number with its unit behind it, or the number alone where the kind may stand without unit.
std::string with_unit(const QuantityKind& kind, const UnitSpelling& unit, const std::string& number);

}  // namespace entrywise

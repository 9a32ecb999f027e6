#pragma once

#include <optional>
#include <vector>

#include "judging/impression.hpp"
#include "judging/kind.hpp"
#include "judging/sheet.hpp"
#include "judging/tariff.hpp"
#include "judging/tasting.hpp"
#include "style/declaration.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

/// All that counts of an entry against a style: levels, kinds of smell, and what the form leaves out.
struct Verdict {
    std::vector<Declaration> missing;
    std::vector<KindMiss> kinds;
    Sheet sheet;
};

/// Judges a tasting by a style, or by what `judged_style` makes of a specialty style and its base.
Verdict verdict_on(const Tasting& tasting, const Style& style, const Handbook& handbook);

/// The same with the impression of the tasting and the handbook's score sheet made ready, for who judges more
/// than once.
Verdict verdict_on(const Tasting& tasting, const Impression& impression, const Style& style,
                   const Handbook& handbook, const Tariff& tariff);

}  // namespace entrywise

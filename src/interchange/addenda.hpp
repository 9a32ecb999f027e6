#pragma once

#include <string>
#include <vector>

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "interchange/statements.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// What a standard cannot say of a recipe, as lines for its notes; no text where there is nothing.
///
///     entrywise/recipe/1 also says:
///     hops.2.alpha: 5.5 +- 0.4 %
std::string notes_of(const std::vector<Statement>& statements);

/// The lines that `notes_of` wrote into a text that may hold other words before and behind them.
std::vector<DraftAddendum> addenda_in(const Written& notes);

/// Whether a text holds the heading that `notes_of` writes.
bool holds_addenda(const std::string& notes);

/// Sets in the document what the addenda say. A path that leads nowhere is a fault; what a key may hold the
/// recipe's reader checks.
void apply(const std::vector<DraftAddendum>& addenda, Node& document, ExchangeLog& log);

}  // namespace entrywise

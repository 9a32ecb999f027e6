#pragma once

#include "advice/explain.hpp"
#include "report/page.hpp"
#include "style/handbook.hpp"

namespace entrywise {

/// An explanation as an article of a page.
Article explain_article(const Explanation& explanation, const Handbook& handbook);

}  // namespace entrywise

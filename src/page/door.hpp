#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.hpp"
#include "knowledge/knowledge.hpp"
#include "style/remark.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The one way from the script of the interactive page into the core: a question as JSON, answered as JSON.
///
///     {"ask": "shelf"}                                  what recipes are made of, and the styles and the
///     sheet
///     {"ask": "read", "text", "file", "pick"}           {"recipe", "remarks"} of a file of any known format
///     {"ask": "write", "recipe", "to"}                  {"text", "remarks"}; `to`: recipe or beerjson
///     {"ask": "check", "recipe"}                        {"document", "article"}: entrywise/check/1 and a
///     page
///     {"ask": "rank", "recipe", "guide"}                {"document", "article"}: entrywise/rank/1
///     {"ask": "mend", "recipe", "stage"}                the same of entrywise/mend/1, and {"mended":
///     [recipe]}
///     {"ask": "explain", "recipe", "notes", "scores"}   the same of entrywise/explain/1
///
/// A recipe is the recipe file as JSON, each amount a text with its unit. An answer of format
/// `entrywise/page/1` has what is listed; anything wrong makes it `entrywise/fault/1`, where each fault has
/// besides, as `at`, the way to the part of the recipe that it is of, such as `hops.2.alpha`, items counted
/// from one, or null. Never throws for what is asked; the same question gives the same answer.
class Door {
  public:
    /// Opens on what is built in, which the build has found free of faults.
    static Outcome<Door> open();

    std::string answer(std::string_view question) const;

  private:
    Door(Knowledge knowledge, RemarkBook remarks, std::vector<Style> styles);

    Knowledge knowledge_;
    RemarkBook remarks_;
    std::vector<Style> styles_;
};

}  // namespace entrywise

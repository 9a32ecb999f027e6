#pragma once

#include <functional>
#include <string>

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "cli/exit_status.hpp"
#include "report/json_text.hpp"
#include "report/page.hpp"

namespace entrywise {

/// What a command makes of one input: a text, a document or an article of a page, as the call's format asks,
/// and how it ended.
struct Report {
    std::string text;
    Json document;
    ExitStatus status = ExitStatus::done;
    Article article = {};
};

/// Makes a report of every word of the call and delivers them together: texts with an empty line between
/// them, a single document as it is and several as an array, articles as one page, in the order of the call.
/// An input that is wrong stops no other; its faults are told at the end.
ExitStatus report_on_each(const Call& call, const std::function<Outcome<Report>(const std::string&)>& make);

/// Tells what is wrong where no input was worked on, in the format of the call.
ExitStatus report_faults(const Call& call, const std::vector<Fault>& faults);

/// Delivers a result and tells if that fails.
ExitStatus deliver_or_tell(const Call& call, const std::string& result);

}  // namespace entrywise

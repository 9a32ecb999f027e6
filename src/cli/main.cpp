#include <cstdlib>
#include <exception>
#include <new>
#include <string>
#include <variant>
#include <vector>

#include "base/text.hpp"
#include "cli/call.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/large_pages.hpp"
#include "cli/streams.hpp"
#include "report/version.hpp"

namespace {

using namespace entrywise;

ExitStatus answer(const Call& call) {
    switch (call.command) {
        case Command::estimate:
            return estimate_command(call);
        case Command::check:
            return check_command(call);
        case Command::rank:
            return rank_command(call);
        case Command::explain:
            return explain_command(call);
        case Command::screen:
            return screen_command(call);
        case Command::mend:
            return mend_command(call);
        case Command::convert:
            return convert_command(call);
        case Command::styles_list:
            return styles_list_command(call);
        case Command::styles_show:
            return styles_show_command(call);
        case Command::styles_compare:
            return styles_compare_command(call);
        case Command::styles_validate:
            return styles_validate_command(call);
    }
    return ExitStatus::fault_of_ours;
}

ExitStatus answer(const HelpWanted& help) {
    if (help.asked_for) {
        return deliver_or_tell({}, help.text);
    }
    tell(help.text);
    return ExitStatus::wrong_input;
}

ExitStatus answer(const VersionWanted& /*wanted*/) {
    const Outcome<Library> library = open_library_for({});
    const std::string guides = library ? joined(library->guides(), ", ") : "none";
    return deliver_or_tell({}, "entrywise " + program_version() + ", styles " + guides + '\n');
}

ExitStatus answer(const WrongCall& wrong) {
    Call call;
    call.format = wrong.format;
    return report_faults(call, wrong.faults);
}

ExitStatus run(const std::vector<std::string>& arguments) {
    prepare_streams();
    return std::visit([](const auto& understood) { return answer(understood); }, understand(arguments));
}

/// At once and not by throwing, since not all libraries stand that where memory is short. Files are written
/// beside their targets, so that these are as they were.
[[noreturn]] void end_without_memory() {
    tell("entrywise ran out of memory. A file that was to be written is as it was before.\n");
    std::_Exit(static_cast<int>(ExitStatus::fault_of_ours));
}

}  // namespace

int main(int count, char** words) {
    entrywise::take_memory_in_large_pages();
    std::set_new_handler(end_without_memory);
    try {
        return static_cast<int>(run({words + (count > 0 ? 1 : 0), words + count}));
    } catch (const std::exception& fault) {
        entrywise::tell("entrywise " + entrywise::program_version() + " met a fault of its own: " +
                        entrywise::visible(fault.what()) + "\nPlease report it together with the input.\n");
    } catch (...) {
        entrywise::tell("entrywise met a fault of its own. Please report it together with the input.\n");
    }
    return static_cast<int>(entrywise::ExitStatus::fault_of_ours);
}

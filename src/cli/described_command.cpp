#include "cli/described_command.hpp"

#include <string_view>

#include "base/text.hpp"

namespace entrywise {

namespace {

DescribedOption described(const CLI::Option& option, const CommandLine& line) {
    DescribedOption result;
    if (!option.get_snames().empty()) {
        result.letter = "-" + option.get_snames().front();
    }
    result.name = "--" + option.get_lnames().front();
    result.description = option.get_description();
    const bool takes_a_value = option.get_expected_max() > 0;
    if (takes_a_value) {
        result.value = option.get_type_name();
        result.accepted = line.accepted_by(option);
    }
    return result;
}

/// Takes the usage and the examples out of what a command's help begins with.
void add_calls(DescribedCommand& command, const std::string& help) {
    constexpr std::string_view usage = "Usage: ";
    bool are_examples = false;
    for (const std::string_view line : split(help, "\n")) {
        if (line.substr(0, usage.size()) == usage) {
            command.usage = line.substr(usage.size());
        } else if (line == "Examples:") {
            are_examples = true;
        } else if (are_examples && !line.empty()) {
            command.examples.emplace_back(line);
        }
    }
}

void add_command(std::vector<DescribedCommand>& commands, const CLI::App& app,
                 const std::vector<std::string>& words, const CommandLine& line) {
    const auto below = app.get_subcommands([](const CLI::App*) { return true; });
    DescribedCommand command;
    command.words = words;
    command.description = app.get_description();
    command.has_commands = !below.empty();
    add_calls(command, app.get_footer());
    for (const CLI::Option* const option : app.get_options()) {
        command.options.push_back(described(*option, line));
    }
    if (!words.empty()) {
        command.accepted = line.accepted_by(app);
    }
    commands.push_back(std::move(command));
    for (const CLI::App* const each : below) {
        std::vector<std::string> longer = words;
        longer.push_back(each->get_name());
        add_command(commands, *each, longer, line);
    }
}

}  // namespace

std::vector<DescribedCommand> described_commands() {
    const CommandLine line;
    std::vector<DescribedCommand> commands;
    add_command(commands, line.app(), {}, line);
    return commands;
}

}  // namespace entrywise

#include <fmt/format.h>

#include "base/text.hpp"
#include "manual/completions.hpp"
#include "manual/shell_words.hpp"

namespace entrywise {

namespace {

std::string in_fish_quotes(std::string_view text) {
    return in_quotes(text, "\\'");
}

/// When a completion of this command applies.
std::string condition(const DescribedCommand& command, const std::vector<DescribedCommand>& commands) {
    std::vector<std::string> parts;
    for (const std::string& word : command.words) {
        parts.push_back("__fish_seen_subcommand_from " + word);
    }
    if (command.words.empty()) {
        return "__fish_use_subcommand";
    }
    if (command.has_commands) {
        std::vector<std::string> names;
        for (const DescribedCommand& each : commands_below(command, commands)) {
            names.push_back(each.words.back());
        }
        parts.push_back("not __fish_seen_subcommand_from " + joined(names, " "));
    }
    return joined(parts, "; and ");
}

/// What stands behind an option or a command, as options of fish's `complete`; files unless it says so.
std::string values_of(const Acceptance& accepted) {
    switch (accepted.kind) {
        case Accepted::words:
            return fmt::format("-f -a {}", in_fish_quotes(joined(accepted.words, " ")));
        case Accepted::style:
            return accepted.several ? "-f -a '(__fish_append , (__entrywise_styles))'"
                                    : "-f -a '(__entrywise_styles)'";
        case Accepted::guide:
            return "-f -a '(__entrywise_guides)'";
        case Accepted::folder:
            return "-f -a '(__fish_complete_directories)'";
        case Accepted::file:
        case Accepted::file_or_folder:
            return "-F";
        case Accepted::anything:
            return "-f";
    }
    return {};
}

std::string option_line(const std::string& when, const DescribedOption& option) {
    const std::string letter = option.letter.empty() ? std::string() : " -s " + option.letter.substr(1);
    const std::string value = option.value.empty() ? " -f" : " -r " + values_of(option.accepted);
    return fmt::format("complete -c entrywise -n {}{} -l {} -d {}{}\n", in_fish_quotes(when), letter,
                       option.name.substr(2), in_fish_quotes(option.description), value);
}

}  // namespace

std::string fish_completion(const std::vector<DescribedCommand>& commands) {
    std::string text = fmt::format(R"(# Completes calls of entrywise in fish.

function __entrywise_styles
    {}
end

function __entrywise_guides
    {}
end

)",
                                   styles_pipeline("entrywise", "\\t"), guides_pipeline("entrywise"));
    for (const DescribedCommand& command : commands) {
        const std::string when = condition(command, commands);
        for (const DescribedCommand& each : commands_below(command, commands)) {
            text += fmt::format("complete -c entrywise -n {} -f -a {} -d {}\n", in_fish_quotes(when),
                                each.words.back(), in_fish_quotes(each.description));
        }
        if (!command.has_commands) {
            text += fmt::format("complete -c entrywise -n {} {}\n", in_fish_quotes(when),
                                values_of(command.accepted));
        }
        for (const DescribedOption& option : command.options) {
            text += option_line(when, option);
        }
    }
    return text;
}

}  // namespace entrywise

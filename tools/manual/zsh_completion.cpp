#include <fmt/format.h>

#include "base/text.hpp"
#include "manual/completions.hpp"
#include "manual/shell_words.hpp"

namespace entrywise {

namespace {

std::string in_zsh_quotes(std::string_view text) {
    return in_quotes(text, "'\\''");
}

/// A description within the brackets of a specification.
std::string in_brackets(std::string_view text) {
    std::string result;
    for (const char letter : text) {
        const bool is_special = letter == '[' || letter == ']' || letter == ':' || letter == '\\';
        result += is_special ? std::string("\\") + letter : std::string(1, letter);
    }
    return result;
}

std::string action_for(const Acceptance& accepted) {
    const std::string sequence = accepted.several ? "_sequence " : "";
    switch (accepted.kind) {
        case Accepted::words:
            return accepted.several ? fmt::format("_values -s , word {}", joined(accepted.words, " "))
                                    : fmt::format("({})", joined(accepted.words, " "));
        case Accepted::style:
            return sequence + "_entrywise_known_styles";
        case Accepted::guide:
            return sequence + "_entrywise_known_guides";
        case Accepted::folder:
            return "_files -/";
        case Accepted::file:
        case Accepted::file_or_folder:
            return "_files";
        case Accepted::anything:
            return " ";
    }
    return {};
}

std::string specification(const DescribedOption& option) {
    const std::string value =
        option.value.empty() ? std::string()
                             : fmt::format(":{}:{}", in_brackets(option.value), action_for(option.accepted));
    const std::string rest = fmt::format("[{}]{}", in_brackets(option.description), value);
    if (option.letter.empty()) {
        return in_zsh_quotes("*" + option.name + rest);
    }
    return fmt::format("{} {}", in_zsh_quotes("*" + option.letter + rest),
                       in_zsh_quotes("*" + option.name + rest));
}

std::string specifications(const DescribedCommand& command) {
    std::string text;
    for (const DescribedOption& option : command.options) {
        text += fmt::format(" \\\n        {}", specification(option));
    }
    return text;
}

/// The function of a command with others below it.
std::string function_of_branch(const DescribedCommand& command,
                               const std::vector<DescribedCommand>& commands) {
    std::string names;
    std::string cases;
    for (const DescribedCommand& each : commands_below(command, commands)) {
        names += fmt::format(" \\\n                {}",
                             in_zsh_quotes(each.words.back() + ":" + in_brackets(each.description)));
        cases +=
            fmt::format("                {}) _entrywise{} ;;\n", each.words.back(), function_suffix(each));
    }
    return fmt::format(R"(
_entrywise{}() {{
    local curcontext=$curcontext state line
    local -a known
    _arguments -C{} \
        '1: :->command' '*:: :->rest'
    case $state in
        command)
            known=({})
            _describe -t commands command known
            ;;
        rest)
            case $words[1] in
{}            esac
            ;;
    esac
}}
)",
                       function_suffix(command), specifications(command), names, cases);
}

std::string function_of_leaf(const DescribedCommand& command) {
    return fmt::format("\n_entrywise{}() {{\n    _arguments{} \\\n        '*: :{}'\n}}\n",
                       function_suffix(command), specifications(command), action_for(command.accepted));
}

}  // namespace

std::string zsh_completion(const std::vector<DescribedCommand>& commands) {
    std::string text = fmt::format(R"(#compdef entrywise
# Completes calls of entrywise in zsh.

_entrywise_known_styles() {{
    local -a styles
    styles=("${{(@f)$({})}}")
    _describe -t styles style styles "$@"
}}

_entrywise_known_guides() {{
    local -a guides
    guides=("${{(@f)$({})}}")
    _describe -t guides guide guides "$@"
}}
)",
                                   styles_pipeline("entrywise", ":"), guides_pipeline("entrywise"));
    for (const DescribedCommand& command : commands) {
        text += command.has_commands ? function_of_branch(command, commands) : function_of_leaf(command);
    }
    return text + "\n_entrywise \"$@\"\n";
}

}  // namespace entrywise

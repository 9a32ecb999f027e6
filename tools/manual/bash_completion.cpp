#include <fmt/format.h>

#include "base/text.hpp"
#include "manual/completions.hpp"
#include "manual/shell_words.hpp"

namespace entrywise {

namespace {

constexpr std::string_view beginning = R"(# Completes calls of entrywise in bash.

# Offers these words for the one that is typed, or for its last part where several stand apart by commas.
_entrywise_offer() {
    local typed=$1 before= word
    shift
    if [[ $typed == *,* ]]; then
        before=${typed%,*},
        typed=${typed##*,}
    fi
    COMPREPLY=()
    for word in "$@"; do
        [[ $word == "$typed"* ]] && COMPREPLY+=("$before$word")
    done
}

_entrywise_paths() {
    compopt -o filenames
    mapfile -t COMPREPLY < <(compgen "$2" -- "$1")
}
)";

std::string offer(const Acceptance& accepted) {
    const std::string end = accepted.several ? "; compopt -o nospace" : "";
    switch (accepted.kind) {
        case Accepted::words:
            return fmt::format("_entrywise_offer \"$typed\" {}{}", joined(accepted.words, " "), end);
        case Accepted::style:
            return fmt::format("_entrywise_offer \"$typed\" $({}){}", styles_pipeline("\"$program\"", "\\n"),
                               end);
        case Accepted::guide:
            return fmt::format("_entrywise_offer \"$typed\" $({}){}", guides_pipeline("\"$program\""), end);
        case Accepted::folder:
            return "_entrywise_paths \"$typed\" -d";
        case Accepted::file:
        case Accepted::file_or_folder:
            return "_entrywise_paths \"$typed\" -f";
        case Accepted::anything:
            return ":";
    }
    return {};
}

std::string values_of(const DescribedCommand& command) {
    std::string text;
    for (const DescribedOption& option : command.options) {
        if (!option.value.empty()) {
            const std::string name = joined(command.words, " ");
            const std::string letter =
                option.letter.empty() ? std::string() : fmt::format("'{} {}' | ", name, option.letter);
            text += fmt::format("        {}'{} {}') {}; return ;;\n", letter, name, option.name,
                                offer(option.accepted));
        }
    }
    return text;
}

std::string words_behind(const DescribedCommand& command, const std::vector<DescribedCommand>& commands) {
    if (!command.has_commands) {
        return offer(command.accepted);
    }
    std::vector<std::string> names;
    for (const DescribedCommand& each : commands_below(command, commands)) {
        names.push_back(each.words.back());
    }
    return fmt::format("_entrywise_offer \"$typed\" {}", joined(names, " "));
}

}  // namespace

std::string bash_completion(const std::vector<DescribedCommand>& commands) {
    std::string known;
    std::string values;
    std::string behind;
    for (const DescribedCommand& command : commands) {
        const std::string name = joined(command.words, " ");
        if (!command.words.empty()) {
            known += fmt::format("{}'{}'", known.empty() ? "" : " | ", name);
        }
        values += values_of(command);
        behind += fmt::format(
            "        '{}')\n            if [[ $typed == -* ]]; then\n                _entrywise_offer "
            "\"$typed\" "
            "{}\n            else\n                {}\n            fi\n            ;;\n",
            name, option_words(command), words_behind(command, commands));
    }
    std::string text(beginning);
    text += fmt::format(R"(
_entrywise() {{
    local program=$1 typed=$2 before=$3 command= longer word
    for word in "${{COMP_WORDS[@]:1:COMP_CWORD-1}}"; do
        longer=${{command:+$command }}$word
        case $longer in
            {}) command=$longer ;;
        esac
    done
    # What stands behind an equals sign comes as a word of its own.
    if [[ $before == = ]]; then
        before=${{COMP_WORDS[COMP_CWORD - 2]}}
    elif [[ $typed == = ]]; then
        typed=
    fi
    COMPREPLY=()
    case "$command $before" in
{}    esac
    case $command in
{}    esac
}}

complete -F _entrywise entrywise
)",
                        known, values, behind);
    return text;
}

}  // namespace entrywise

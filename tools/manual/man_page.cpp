#include "manual/man_page.hpp"

#include <fmt/format.h>

#include <array>
#include <cstddef>

#include "base/text.hpp"

namespace entrywise {

namespace {

/// A text as mdoc takes it: nothing in it is a command of the language, and a dash is one that can be
/// copied into a call.
std::string plain(std::string_view text) {
    std::string result;
    if (!text.empty() && (text.front() == '.' || text.front() == '\'')) {
        result = "\\&";
    }
    for (const char letter : text) {
        switch (letter) {
            case '\\':
                result += "\\e";
                break;
            case '-':
                result += "\\-";
                break;
            default:
                result += letter;
        }
    }
    return result;
}

/// A text as one word of a line that is a command of mdoc.
std::string word(std::string_view text) {
    std::string result = "\"";
    for (const char letter : plain(text)) {
        result += letter == '"' ? std::string("\"\"") : std::string(1, letter);
    }
    return result + '"';
}

std::string date_words(std::string_view date) {
    static constexpr std::array<std::string_view, 12> months{"January",   "February", "March",    "April",
                                                             "May",       "June",     "July",     "August",
                                                             "September", "October",  "November", "December"};
    const auto parts = split(date, "-");
    const auto month = static_cast<std::size_t>((parts[1][0] - '0') * 10 + (parts[1][1] - '0'));
    const std::string_view day = parts[2][0] == '0' ? parts[2].substr(1) : parts[2];
    return fmt::format("{} {}, {}", months.at(month - 1), day, parts[0]);
}

std::string option_text(const DescribedOption& option) {
    std::string text = ".It";
    if (!option.letter.empty()) {
        text += fmt::format(" Fl {} ,", option.letter.substr(1));
    }
    text += fmt::format(" Fl {}", plain(option.name.substr(1)));
    if (!option.value.empty()) {
        text += fmt::format(" Ar {}", word(option.value));
    }
    return text + '\n' + plain(option.description) + ".\n";
}

std::string options_text(const std::vector<DescribedOption>& options) {
    std::string text = ".Bl -tag -width Ds\n";
    for (const DescribedOption& option : options) {
        text += option_text(option);
    }
    return text + ".El\n";
}

std::string calls_text(const std::vector<std::string>& calls) {
    std::string text = ".Bd -literal\n";
    for (const std::string& call : calls) {
        text += plain(call) + '\n';
    }
    return text + ".Ed\n";
}

bool is_help(const DescribedOption& option) {
    return option.name == "--help";
}

std::string command_text(const DescribedCommand& command) {
    std::vector<DescribedOption> options = command.options;
    std::erase_if(options, is_help);
    std::string text =
        fmt::format(".Ss {}\n{}.\n", plain(joined(command.words, " ")), plain(command.description));
    text += calls_text({command.usage});
    if (!options.empty()) {
        text += options_text(options);
    }
    return text + ".Pp\nExamples:\n" + calls_text(command.examples);
}

constexpr std::string_view description = R"(.Nm
works out from the grain and hop bill of a beer what it will be, each number
with its uncertainty, and what a trained palate will sense of it.
It holds that against a style and predicts the fifty\-point score sheet: which
sections lose points, why, and what to change.
.Pp
Recipes are YAML files in the format of the program, BeerJSON 1.0, BeerXML 1.0,
or a table of ingredients.
Where a file is wanted,
.Sq \-
is standard input or output.
A file behind
.Fl o
is written whole or not at all.
Styles and ingredient tables are built in; no network is used.
)";

constexpr std::string_view environment = R"(.Sh ENVIRONMENT
.Bl -tag -width Ds
.It Ev COLUMNS
Columns of the page, where
.Fl \-width
does not say; else those of the terminal, or 80 without one.
Pages keep to 60 to 160 columns.
.It Ev NO_COLOR
Where it is set and not empty, nothing is colored unless
.Fl \-color
asks for it.
.It Ev FORCE_COLOR , CLICOLOR_FORCE
Where one of them is set and not empty, results are colored even without a
terminal.
.It Ev TERM
.Sq dumb
stands for a terminal without color.
.It Ev LC_ALL , LC_CTYPE , LANG
The first of these that is set tells whether the terminal takes UTF\-8; without
it, plain ASCII is written.
.El
)";

constexpr std::string_view exit_status = R"(.Sh EXIT STATUS
.Bl -tag -width Ds
.It 0
Done.
.It 1
A beer has at least as many points at risk as
.Fl \-fail\-at
allows.
.It 2
The input or the call is wrong.
.It 3
A fault of the program.
.It 130
Interrupted.
.El
.Pp
Over many recipes the highest holds, and every one is tried.
)";

constexpr std::string_view caveats = R"(.Sh CAVEATS
The program does not taste: what comes of brewing, keeping and serving is left
to the palate.
Predicted strength is no basis for driving, labeling, tax or serving.
)";

}  // namespace

std::string man_page(const std::vector<DescribedCommand>& commands, std::string_view version,
                     std::string_view date) {
    const DescribedCommand& program = commands.front();
    std::string text = fmt::format(
        ".Dd {}\n.Dt ENTRYWISE 1\n.Os Entrywise {}\n.Sh NAME\n.Nm entrywise\n.Nd predicts from a beer recipe "
        "how a judge would score it against a style\n.Sh SYNOPSIS\n.Nm\n.Ar command\n.Op Ar option ...\n"
        ".Ar word ...\n.Nm\n.Fl \\-help | \\-version\n.Sh DESCRIPTION\n",
        date_words(date), version);
    text += description;
    text += ".Pp\nThe program itself takes two options, and every command the first of them:\n";
    text += options_text(program.options);
    text += ".Sh COMMANDS\n";
    for (std::size_t index = 1; index < commands.size(); ++index) {
        text += command_text(commands[index]);
    }
    text += environment;
    text += exit_status;
    text += ".Sh EXAMPLES\nWhat would a judge say of this recipe, as a page to hand on:\n";
    text += calls_text({"entrywise check slack-tide.yaml --format html -o slack-tide.html"});
    text += "Where should it be entered, among three categories:\n";
    text += calls_text({"entrywise rank slack-tide.yaml --among 18B,21A,22A"});
    text += "Which of a club's entries want a word before the evening:\n";
    text += calls_text({"entrywise screen entries.csv --status look,move,incomplete"});
    text += caveats;
    return text;
}

}  // namespace entrywise

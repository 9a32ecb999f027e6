#include "cli/call.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "cli/command_line.hpp"
#include "report/terminal.hpp"

namespace entrywise {

namespace {

/// One call as it is being understood: the parser, its values and what was found wrong.
class Understanding {
  public:
    std::variant<Call, HelpWanted, VersionWanted, WrongCall> of(const std::vector<std::string>& arguments);

  private:
    void fault(std::string found, std::string expected, std::string nearest = {}, std::string remedy = {}) {
        faults_.push_back({.place = {"command line", {}},
                           .found = std::move(found),
                           .expected = std::move(expected),
                           .nearest = std::move(nearest),
                           .remedy = std::move(remedy)});
    }

    const RawOptions& raw() const { return line_.raw(); }

    CLI::App* chosen() {
        CLI::App* command = &line_.app();
        while (!command->get_subcommands().empty()) {
            command = command->get_subcommands().back();
        }
        return command;
    }

    const std::vector<std::string>& words_of(const std::string& option);
    std::string one_of(const std::string& option, const std::string& value);
    std::optional<double> number_within(const std::string& option, const std::string& value, double low,
                                        double high);
    void refuse_unknown(const std::vector<std::string>& left_over, CLI::App& command);
    void choose_command(CLI::App& command);
    void check_words(const CLI::App& command);
    void check_options();
    void check_format();
    void check_mending();
    void check_screening();

    CommandLine line_;
    Call call_;
    std::vector<Fault> faults_;
};

std::string see_help(const CLI::App& app) {
    std::string command = app.get_name();
    for (const CLI::App* parent = app.get_parent(); parent != nullptr; parent = parent->get_parent()) {
        command = parent->get_name().empty() ? command : fmt::format("{} {}", parent->get_name(), command);
    }
    return command.empty() ? "See entrywise --help." : fmt::format("See entrywise {} --help.", command);
}

std::vector<std::string> names_of_commands(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* const command : app.get_subcommands([](const CLI::App*) { return true; })) {
        names.push_back(command->get_name());
    }
    return names;
}

std::vector<std::string> names_of_options(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::Option* const option : app.get_options()) {
        for (const std::string& name : option->get_lnames()) {
            names.push_back("--" + name);
        }
    }
    return names;
}

bool looks_like_an_option(const std::string& word) {
    return word.size() > 1 && word.front() == '-';
}

/// What an option of the chosen command knows; nothing where it has no such option.
const std::vector<std::string>& Understanding::words_of(const std::string& option) {
    static const std::vector<std::string> none;
    const CLI::Option* const chosen_option = chosen()->get_option_no_throw(option);
    return chosen_option == nullptr ? none : line_.accepted_by(*chosen_option).words;
}

std::string Understanding::one_of(const std::string& option, const std::string& value) {
    const std::vector<std::string>& words = words_of(option);
    if (!words.empty() && std::find(words.begin(), words.end(), value) == words.end()) {
        fault(option + ' ' + value, option + ' ' + words.front() + " or one of the other words it knows",
              nearest_word(value, words));
    }
    return value;
}

std::optional<double> Understanding::number_within(const std::string& option, const std::string& value,
                                                   double low, double high) {
    if (chosen()->get_option_no_throw(option) == nullptr || chosen()->count(option) == 0) {
        return std::nullopt;
    }
    const auto number = number_from(value);
    if (!number || *number < low || *number > high) {
        fault(option + ' ' + value,
              option + " with a number from " + shortest(low) + " to " + shortest(high));
        return std::nullopt;
    }
    return number;
}

/// CLI11 leaves over what it does not know; what looks like an option there is a wrong one, the rest are
/// words.
void Understanding::refuse_unknown(const std::vector<std::string>& left_over, CLI::App& command) {
    for (const std::string& word : left_over) {
        if (looks_like_an_option(word)) {
            const std::string name = word.substr(0, word.find('='));
            fault(name, "an option that it knows", nearest_word(name, names_of_options(command)),
                  see_help(command));
        } else if (word.empty()) {
            fault("an empty word", "the name of a file or a style", {}, see_help(command));
        } else {
            call_.words.push_back(word);
        }
    }
}

void Understanding::choose_command(CLI::App& command) {
    const std::string& name = command.get_name();
    const bool of_styles = command.get_parent() != nullptr && command.get_parent()->get_name() == "styles";
    if (of_styles) {
        call_.command = name == "list"      ? Command::styles_list
                        : name == "show"    ? Command::styles_show
                        : name == "compare" ? Command::styles_compare
                                            : Command::styles_validate;
    } else if (name == "explain") {
        call_.command = Command::explain;
    } else if (name == "convert") {
        call_.command = Command::convert;
    } else if (name == "estimate" || name == "check") {
        call_.command = name == "check" ? Command::check : Command::estimate;
    } else if (name == "mend") {
        call_.command = Command::mend;
    } else if (name == "rank") {
        call_.command = Command::rank;
    } else if (name == "screen") {
        call_.command = Command::screen;
    } else {
        const std::vector<std::string> known = names_of_commands(command);
        const std::string found = call_.words.empty() ? "no command" : call_.words.front();
        fault(found, "a command: " + CLI::detail::join(known, ", "),
              call_.words.empty() ? std::string() : nearest_word(found, known), see_help(command));
    }
}

void Understanding::check_words(const CLI::App& command) {
    const std::size_t count = call_.words.size();
    if (call_.command == Command::styles_list) {
        return;
    }
    if (call_.command == Command::styles_compare) {
        if (count != 2) {
            fault(count == 1 ? "1 style" : std::to_string(count) + " styles", "the codes of two styles", {},
                  see_help(command));
        }
    } else if (call_.command == Command::screen) {
        if (count != 1) {
            fault(count == 0 ? "no entries" : call_.words[1], "one folder, one table of entries, or -", {},
                  see_help(command));
        }
    } else if (count == 0) {
        const bool shows_styles = call_.command == Command::styles_show;
        fault(shows_styles ? "no style" : "no file", shows_styles ? "a style's code" : "one file or more", {},
              see_help(command));
    } else if (call_.command == Command::convert && call_.words.size() > 1) {
        fault(call_.words[1], "one file", {}, see_help(command));
    }
}

void Understanding::check_options() {
    call_.style = raw().style;
    call_.guide = raw().guide;
    call_.competition = raw().competition;
    if (!call_.competition.empty() && !call_.guide.empty()) {
        fault("--guide beside --competition", "one of them: the competition names its guide itself");
    }
    call_.card = raw().card;
    call_.pick = raw().pick;
    call_.to = raw().to.empty() ? raw().to : one_of("--to", raw().to);
    call_.styles_folder = raw().styles_folder;
    call_.ingredients_folder = raw().ingredients_folder;
    call_.among = raw().among;
    call_.notes = raw().notes;
    call_.measured = raw().measured;
    call_.scores = raw().scores;
    if (call_.command == Command::explain && call_.notes.empty() && call_.scores.empty()) {
        fault("no note", "--note with what a judge wrote, such as --note \"thin\"", {}, see_help(*chosen()));
    }
    for (const std::string& note : call_.notes) {
        if (trimmed(note).empty()) {
            fault("an empty note", "--note with what a judge wrote", {}, see_help(*chosen()));
        }
    }
    call_.output = raw().output;
    call_.ascii = raw().ascii;
    check_format();
    const std::string color = one_of("--color", raw().color);
    call_.color = color == "always"  ? ColorChoice::always
                  : color == "never" ? ColorChoice::never
                                     : ColorChoice::automatic;
    constexpr double all_points = 50.0;
    call_.fail_at = number_within("--fail-at", raw().fail_at, 0.0, all_points);
    if (const auto width = number_within("--width", raw().width, narrowest_page, widest_page)) {
        call_.width = static_cast<std::size_t>(*width);
    }
    if (raw().output.empty()) {
        fault("--output with no name", "the name of a file, or -");
    }
}

void Understanding::check_format() {
    const std::string format = one_of("--format", raw().format);
    call_.format = format == "json"    ? Format::json
                   : format == "jsonl" ? Format::jsonl
                   : format == "csv"   ? Format::csv
                   : format == "html"  ? Format::html
                                       : Format::text;
}

void Understanding::check_mending() {
    constexpr double all_points = 50.0;
    call_.brewed = one_of("--stage", raw().stage) == "brewed";
    call_.target = number_within("--target", raw().target, 0.0, all_points);
    call_.with_folder = raw().with_folder;
    call_.write = raw().write;
    if (!call_.with_folder.empty() && !call_.brewed) {
        fault("--with without --stage brewed", "--stage brewed, as only a finished beer is blended");
    }
    const bool one_file = call_.words.size() == 1 && call_.words.front() != "-";
    if (!call_.write.empty() && !one_file) {
        fault("--write", "one recipe file beside it", {}, "Mend the recipes one by one.");
    }
}

/// What stands in several texts, apart by commas.
std::vector<std::string> parts_of(const std::vector<std::string>& texts) {
    std::vector<std::string> parts;
    for (const std::string& text : texts) {
        for (const std::string_view part : split(text, ",")) {
            parts.emplace_back(part);
        }
    }
    return parts;
}

void Understanding::check_screening() {
    constexpr double most_threads = 256.0;
    const std::vector<std::string>& orders = words_of("--sort");
    const std::string order = one_of("--sort", raw().sort);
    call_.order = static_cast<ScreenOrder>(std::find(orders.begin(), orders.end(), order) - orders.begin());
    call_.statuses = parts_of(raw().statuses);
    for (const std::string& status : call_.statuses) {
        one_of("--status", status);
    }
    call_.categories = parts_of(raw().categories);
    call_.blind = raw().blind;
    call_.resume = raw().resume;
    if (const auto threads = number_within("--threads", raw().threads, 1.0, most_threads)) {
        call_.threads = static_cast<std::size_t>(*threads);
    }
    if (call_.format == Format::jsonl && order != "entry") {
        fault("--sort " + order + " with --format jsonl", "--sort entry, as a stream is told as it comes");
    }
    if (call_.resume && (call_.format != Format::jsonl || call_.output == "-")) {
        fault("--resume", "--format jsonl and a file behind -o, which it goes on with");
    }
}

std::variant<Call, HelpWanted, VersionWanted, WrongCall> Understanding::of(
    const std::vector<std::string>& arguments) {
    if (arguments.empty()) {
        return HelpWanted{line_.app().get_description() + "\n\n" + CommandLine::short_help() +
                              "\nentrywise --help tells the rest.\n",
                          false};
    }
    // CLI11 refuses words behind `--` where words stood before it; they are no options in any case.
    const auto end_of_options = std::find(arguments.begin(), arguments.end(), "--");
    std::vector<std::string> parsed(std::make_reverse_iterator(end_of_options), arguments.rend());
    try {
        line_.app().parse(std::move(parsed));
    } catch (const CLI::CallForHelp&) {
        return HelpWanted{line_.app().help()};
    } catch (const CLI::ParseError& error) {
        fault(error.what(), "options as the help tells them", {}, see_help(*chosen()));
        return WrongCall{faults_, raw().format == "json" ? Format::json : Format::text};
    }
    if (line_.version_is_wanted()) {
        return VersionWanted{};
    }
    refuse_unknown(line_.app().remaining(), line_.app());
    if (!call_.words.empty() && call_.words.front() == "help") {
        return HelpWanted{line_.app().help()};
    }
    CLI::App& command = *chosen();
    for (CLI::App* level = &command; level != &line_.app(); level = level->get_parent()) {
        refuse_unknown(level->remaining(), *level);
    }
    if (end_of_options != arguments.end()) {
        call_.words.insert(call_.words.end(), end_of_options + 1, arguments.end());
    }
    if (faults_.empty()) {
        choose_command(command);
    }
    if (faults_.empty()) {
        check_words(command);
    }
    check_options();
    if (call_.command == Command::mend) {
        check_mending();
    }
    if (call_.command == Command::screen) {
        check_screening();
    }
    if (!faults_.empty()) {
        return WrongCall{faults_, call_.format};
    }
    return call_;
}

}  // namespace

std::variant<Call, HelpWanted, VersionWanted, WrongCall> understand(
    const std::vector<std::string>& arguments) {
    return Understanding().of(arguments);
}

}  // namespace entrywise

#include "cli/call.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <memory>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "report/terminal.hpp"

namespace entrywise {

namespace {

constexpr const char* top_usage = R"(Usage: entrywise COMMAND [OPTIONS] ...

Examples:
  entrywise check recipes/slack-tide.yaml
  entrywise estimate recipes/slack-tide.yaml
)";

/// Help with usage and examples first, which each command keeps where CLI11 would print a footer.
class HelpLayout : public CLI::Formatter {
  public:
    HelpLayout() { column_width(26); }
    std::string make_usage(const CLI::App* app, std::string /*name*/) const override {
        return '\n' + app->get_footer();
    }
    std::string make_footer(const CLI::App* /*app*/) const override { return {}; }
    std::string make_option_opts(const CLI::Option* option) const override {
        return option->get_type_size() == 0 ? std::string() : ' ' + option->get_type_name();
    }
};

/// Options as they stand in the call, before they are checked. CLI11 is given texts alone: its own
/// conversions take `nan`, hexadecimal numbers and the like.
struct RawOptions {
    std::string style;
    std::string pick;
    std::string to;
    std::string styles_folder;
    std::string ingredients_folder;
    std::string format = "text";
    std::string output = "-";
    std::string fail_at;
    std::string color = "auto";
    std::string width;
    bool ascii = false;
};

CLI::Option* add_text(CLI::App& command, const std::string& name, std::string& value, const std::string& type,
                      const std::string& description) {
    return command.add_option(name, value, description)->type_name(type)->take_last();
}

void add_look(CLI::App& command, RawOptions& raw) {
    add_text(command, "-o,--output", raw.output, "FILE", "Write to a file; - is standard output");
    add_text(command, "--color", raw.color, "WHEN", "auto, always or never");
    command.add_flag("--ascii", raw.ascii, "Write plain ASCII characters alone");
    add_text(command, "--width", raw.width, "N", "Columns of the page, 60 to 160");
}

void add_format(CLI::App& command, RawOptions& raw) {
    add_text(command, "--format", raw.format, "FORMAT", "text or json");
}

void add_styles(CLI::App& command, RawOptions& raw) {
    add_text(command, "--styles", raw.styles_folder, "DIR", "Folder of styles that add or replace");
}

void add_ingredients(CLI::App& command, RawOptions& raw) {
    add_text(command, "--ingredients", raw.ingredients_folder, "DIR",
             "Folder of ingredients that add or replace");
}

void add_pick(CLI::App& command, RawOptions& raw) {
    add_text(command, "--pick", raw.pick, "NAME|N", "Which recipe of a file that holds several");
}

CLI::App* add_command(CLI::App& parent, const std::string& name, const std::string& description,
                      const std::string& usage) {
    CLI::App* const command = parent.add_subcommand(name, description);
    command->footer(usage);
    command->allow_extras();
    return command;
}

void add_estimate(CLI::App& app, RawOptions& raw) {
    CLI::App* const command = add_command(app, "estimate", "What a recipe makes, how surely, and from what",
                                          R"(Usage: entrywise estimate RECIPE... [OPTIONS]

Examples:
  entrywise estimate recipes/slack-tide.yaml
  entrywise estimate --format json - < recipes/slack-tide.yaml
)");
    add_pick(*command, raw);
    add_format(*command, raw);
    add_look(*command, raw);
    add_ingredients(*command, raw);
}

void add_check(CLI::App& app, RawOptions& raw) {
    CLI::App* const command =
        add_command(app, "check", "A recipe against one style, as a judge would mark it",
                    R"(Usage: entrywise check RECIPE... [OPTIONS]

Examples:
  entrywise check recipes/slack-tide.yaml
  entrywise check recipes/slack-tide.yaml --style 21A --fail-at 4
)");
    add_text(*command, "--style", raw.style, "CODE", "Style such as 21A, in place of the declared one");
    add_pick(*command, raw);
    add_format(*command, raw);
    add_look(*command, raw);
    add_text(*command, "--fail-at", raw.fail_at, "POINTS", "Status 1 if so many points are at risk");
    add_styles(*command, raw);
    add_ingredients(*command, raw);
}

void add_convert(CLI::App& app, RawOptions& raw) {
    CLI::App* const command =
        add_command(app, "convert", "A recipe from another format, or to one",
                    R"(Usage: entrywise convert FILE [--to recipe|beerjson] [-o OUT] [OPTIONS]

Examples:
  entrywise convert beer.xml -o beer.yaml
  entrywise convert recipes/slack-tide.yaml --to beerjson -o slack-tide.json
)");
    add_text(*command, "--to", raw.to, "WHAT", "recipe or beerjson; the other one if left out");
    add_pick(*command, raw);
    add_format(*command, raw);
    add_text(*command, "-o,--output", raw.output, "FILE", "Write to a file; - is standard output");
    add_styles(*command, raw);
    add_ingredients(*command, raw);
}

void add_styles_commands(CLI::App& app, RawOptions& raw) {
    CLI::App* const styles =
        add_command(app, "styles", "List styles, show one, or validate style files",
                    R"(Usage: entrywise styles list | show CODE... | validate FILE... [OPTIONS]

Examples:
  entrywise styles list
  entrywise styles show 21A
)");
    styles->require_subcommand(0, 1);
    CLI::App* const list = add_command(*styles, "list", "Every known style, a line each",
                                       "Usage: entrywise styles list [OPTIONS]\n");
    CLI::App* const show =
        add_command(*styles, "show", "What a style asks for",
                    "Usage: entrywise styles show CODE... [OPTIONS]\n\nExample:\n  entrywise "
                    "styles show 21A\n");
    CLI::App* const validate = add_command(*styles, "validate", "Whether style files are sound",
                                           "Usage: entrywise styles validate FILE... [OPTIONS]\n");
    for (CLI::App* const command : {list, show}) {
        add_look(*command, raw);
        add_styles(*command, raw);
    }
    add_format(*validate, raw);
    add_look(*validate, raw);
}

/// One call as it is being understood: the parser, its values and what was found wrong.
class Understanding {
  public:
    Understanding() {
        app_.description("Predicts from a beer recipe how a judge would score it against a style.");
        app_.footer(top_usage);
        app_.formatter(std::make_shared<HelpLayout>());
        app_.allow_extras();
        app_.require_subcommand(0, 1);
        app_.set_help_flag("-h,--help", "Tell how to call it, and end");
        app_.add_flag("--version", version_, "Tell the version of program and styles, and end");
        add_check(app_, raw_);
        add_estimate(app_, raw_);
        add_convert(app_, raw_);
        add_styles_commands(app_, raw_);
    }

    std::variant<Call, HelpWanted, VersionWanted, WrongCall> of(const std::vector<std::string>& arguments);

  private:
    void fault(std::string found, std::string expected, std::string nearest = {}, std::string remedy = {}) {
        faults_.push_back({.place = {"command line", {}},
                           .found = std::move(found),
                           .expected = std::move(expected),
                           .nearest = std::move(nearest),
                           .remedy = std::move(remedy)});
    }

    CLI::App* chosen() {
        CLI::App* command = &app_;
        while (!command->get_subcommands().empty()) {
            command = command->get_subcommands().back();
        }
        return command;
    }

    std::string one_of(const std::string& option, const std::string& value,
                       const std::vector<std::string>& words);
    std::optional<double> number_within(const std::string& option, const std::string& value, double low,
                                        double high);
    void refuse_unknown(const std::vector<std::string>& left_over, CLI::App& command);
    void choose_command(CLI::App& command);
    void check_words(const CLI::App& command);
    void check_options();

    CLI::App app_;
    RawOptions raw_;
    bool version_ = false;
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

std::string Understanding::one_of(const std::string& option, const std::string& value,
                                  const std::vector<std::string>& words) {
    if (std::find(words.begin(), words.end(), value) == words.end()) {
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
        call_.command = name == "list"   ? Command::styles_list
                        : name == "show" ? Command::styles_show
                                         : Command::styles_validate;
    } else if (name == "convert") {
        call_.command = Command::convert;
    } else if (name == "estimate" || name == "check") {
        call_.command = name == "check" ? Command::check : Command::estimate;
    } else {
        const std::vector<std::string> known = names_of_commands(command);
        const std::string found = call_.words.empty() ? "no command" : call_.words.front();
        fault(found, "a command: " + CLI::detail::join(known, ", "),
              call_.words.empty() ? std::string() : nearest_word(found, known), see_help(command));
    }
}

void Understanding::check_words(const CLI::App& command) {
    if (call_.command == Command::styles_list) {
        if (!call_.words.empty()) {
            fault(call_.words.front(), "no more words", {}, see_help(command));
        }
    } else if (call_.words.empty()) {
        const bool shows_styles = call_.command == Command::styles_show;
        fault(shows_styles ? "no style" : "no file", shows_styles ? "a style's code" : "one file or more", {},
              see_help(command));
    } else if (call_.command == Command::convert && call_.words.size() > 1) {
        fault(call_.words[1], "one file", {}, see_help(command));
    }
}

void Understanding::check_options() {
    call_.style = raw_.style;
    call_.pick = raw_.pick;
    call_.to = raw_.to.empty() ? raw_.to : one_of("--to", raw_.to, {"recipe", "beerjson"});
    call_.styles_folder = raw_.styles_folder;
    call_.ingredients_folder = raw_.ingredients_folder;
    call_.output = raw_.output;
    call_.ascii = raw_.ascii;
    call_.format = one_of("--format", raw_.format, {"text", "json"}) == "json" ? Format::json : Format::text;
    const std::string color = one_of("--color", raw_.color, {"auto", "always", "never"});
    call_.color = color == "always"  ? ColorChoice::always
                  : color == "never" ? ColorChoice::never
                                     : ColorChoice::automatic;
    constexpr double all_points = 50.0;
    call_.fail_at = number_within("--fail-at", raw_.fail_at, 0.0, all_points);
    if (const auto width = number_within("--width", raw_.width, narrowest_page, widest_page)) {
        call_.width = static_cast<std::size_t>(*width);
    }
    if (raw_.output.empty()) {
        fault("--output with no name", "the name of a file, or -");
    }
}

std::variant<Call, HelpWanted, VersionWanted, WrongCall> Understanding::of(
    const std::vector<std::string>& arguments) {
    if (arguments.empty()) {
        return HelpWanted{
            app_.get_description() + "\n\n" + top_usage + "\nentrywise --help tells the rest.\n", false};
    }
    // CLI11 refuses words behind `--` where words stood before it; they are no options in any case.
    const auto end_of_options = std::find(arguments.begin(), arguments.end(), "--");
    std::vector<std::string> parsed(std::make_reverse_iterator(end_of_options), arguments.rend());
    try {
        app_.parse(std::move(parsed));
    } catch (const CLI::CallForHelp&) {
        return HelpWanted{app_.help()};
    } catch (const CLI::ParseError& error) {
        fault(error.what(), "options as the help tells them", {}, see_help(*chosen()));
        return WrongCall{faults_, raw_.format == "json" ? Format::json : Format::text};
    }
    if (version_) {
        return VersionWanted{};
    }
    refuse_unknown(app_.remaining(), app_);
    if (!call_.words.empty() && call_.words.front() == "help") {
        return HelpWanted{app_.help()};
    }
    CLI::App& command = *chosen();
    for (CLI::App* level = &command; level != &app_; level = level->get_parent()) {
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

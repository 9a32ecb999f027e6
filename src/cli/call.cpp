#include "cli/call.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <memory>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
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
    std::string guide;
    std::string competition;
    std::string pick;
    std::string to;
    std::string styles_folder;
    std::string ingredients_folder;
    std::string format = "text";
    std::string output = "-";
    std::string fail_at;
    std::string stage = "recipe";
    std::string target;
    std::string with_folder;
    std::string write;
    std::string color = "auto";
    std::string width;
    std::vector<std::string> among;
    std::vector<std::string> notes;
    std::vector<std::string> measured;
    std::vector<std::string> scores;
    std::vector<std::string> statuses;
    std::vector<std::string> categories;
    std::string sort = "entry";
    std::string threads;
    bool blind = false;
    bool resume = false;
    bool ascii = false;
    bool card = false;
};

CLI::Option* add_text(CLI::App& command, const std::string& name, std::string& value, const std::string& type,
                      const std::string& description) {
    return command.add_option(name, value, description)->type_name(type)->take_last();
}

/// An option that may stand several times, a text each time.
void add_texts(CLI::App& command, const std::string& name, std::vector<std::string>& values,
               const std::string& type, const std::string& description) {
    command.add_option(name, values, description)
        ->type_name(type)
        ->allow_extra_args(false)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
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

void add_format_with_pages(CLI::App& command, RawOptions& raw) {
    add_text(command, "--format", raw.format, "FORMAT", "text, json, or html for a page to look at");
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
  entrywise check recipes/slack-tide.yaml --format html -o slack-tide.html
)");
    add_text(*command, "--style", raw.style, "CODE", "Style such as 21A, in place of the declared one");
    add_pick(*command, raw);
    add_format_with_pages(*command, raw);
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

void add_explain(CLI::App& app, RawOptions& raw) {
    CLI::App* const command = add_command(app, "explain", "A judge's notes traced to the recipe",
                                          R"(Usage: entrywise explain RECIPE... --note TEXT... [OPTIONS]

Examples:
  entrywise explain recipes/slack-tide.yaml --note "thin" --note "harsh, hot"
  entrywise explain ale.yaml --note sweet --measured final_gravity=1.020
  entrywise explain ale.yaml --scores aroma=9,flavor=12
)");
    add_texts(*command, "--note", raw.notes, "TEXT", "What a judge wrote; may be given several times");
    add_text(*command, "--style", raw.style, "CODE", "Style such as 21A, in place of the declared one");
    add_texts(*command, "--measured", raw.measured, "KEY=VALUE", "Measured, in place of the recipe's values");
    add_texts(*command, "--scores", raw.scores, "SECTION=POINTS",
              "The judge's points, beside those to expect");
    add_pick(*command, raw);
    add_format_with_pages(*command, raw);
    add_look(*command, raw);
    add_styles(*command, raw);
    add_ingredients(*command, raw);
}

void add_rank(CLI::App& app, RawOptions& raw) {
    CLI::App* const command = add_command(app, "rank", "Where to enter a beer: the styles in order",
                                          R"(Usage: entrywise rank RECIPE... [OPTIONS]

Examples:
  entrywise rank recipes/slack-tide.yaml
  entrywise rank recipes/slack-tide.yaml --among 18B,21A,22A
  entrywise rank recipes/slack-tide.yaml --guide all
  entrywise rank recipes/slack-tide.yaml --competition harbor-cup.yaml
)");
    add_text(*command, "--guide", raw.guide, "GUIDES", "bjcp-2021 if left out, or ba-2025, or all");
    add_text(*command, "--competition", raw.competition, "FILE", "Only what that competition accepts");
    add_texts(*command, "--among", raw.among, "CODES", "Only these styles, such as 18B,21A");
    add_text(*command, "--style", raw.style, "CODE", "Style such as 21A, in place of the declared one");
    add_pick(*command, raw);
    add_format_with_pages(*command, raw);
    add_look(*command, raw);
    add_styles(*command, raw);
    add_ingredients(*command, raw);
}

void add_mend(CLI::App& app, RawOptions& raw) {
    CLI::App* const command = add_command(app, "mend", "The least changes that bring a recipe into style",
                                          R"(Usage: entrywise mend RECIPE... [OPTIONS]

Examples:
  entrywise mend recipes/slack-tide.yaml
  entrywise mend recipes/slack-tide.yaml --write slack-tide-mended.yaml
  entrywise mend recipes/low-water.yaml --stage brewed --with recipes
)");
    add_text(*command, "--style", raw.style, "CODE", "Style such as 21A, in place of the declared one");
    add_text(*command, "--stage", raw.stage, "STAGE", "recipe, or brewed for a finished beer");
    add_text(*command, "--target", raw.target, "POINTS", "Points at risk to come down to; 2 if left out");
    add_text(*command, "--with", raw.with_folder, "DIR", "Folder of recipes to blend a finished beer with");
    add_text(*command, "--write", raw.write, "FILE", "Write the recipe with the least change made");
    add_pick(*command, raw);
    add_format_with_pages(*command, raw);
    add_look(*command, raw);
    add_styles(*command, raw);
    add_ingredients(*command, raw);
}

void add_screen(CLI::App& app, RawOptions& raw) {
    CLI::App* const command =
        add_command(app, "screen", "A club's entries: what to talk about before judging",
                    R"(Usage: entrywise screen DIR | ENTRIES.csv | - [OPTIONS]

Examples:
  entrywise screen recipes/entries.csv
  entrywise screen recipes --status look,move --sort risk
  entrywise screen entries.csv --competition harbor-cup.yaml
  entrywise screen - --format jsonl -o results.jsonl < entries.jsonl
)");
    add_text(*command, "--guide", raw.guide, "GUIDE",
             "Guide of codes and places; the declared one if left out");
    add_text(*command, "--competition", raw.competition, "FILE", "Whose entries these are");
    add_texts(*command, "--status", raw.statuses, "STATUS",
              "Only ready, look, move, incomplete or unreadable ones");
    add_texts(*command, "--category", raw.categories, "CODES", "Only entries of these styles");
    add_text(*command, "--sort", raw.sort, "BY", "entry, risk, gain, category, status or strength");
    command->add_flag("--blind", raw.blind, "Tell nothing that may name a brewer");
    add_text(*command, "--format", raw.format, "FORMAT", "text, csv, json or jsonl");
    add_look(*command, raw);
    command->add_flag("--resume", raw.resume, "Go on with an interrupted run of jsonl into a file");
    add_text(*command, "--threads", raw.threads, "N", "Threads at work; as many as cores if left out");
    add_text(*command, "--fail-at", raw.fail_at, "POINTS", "Status 1 if so many points are at risk");
    add_styles(*command, raw);
    add_ingredients(*command, raw);
}

void add_styles_commands(CLI::App& app, RawOptions& raw) {
    CLI::App* const styles =
        add_command(app, "styles", "List, show and compare styles, or validate files",
                    R"(Usage: entrywise styles list | show | compare | validate ... [OPTIONS]

Examples:
  entrywise styles list
  entrywise styles show 21A
)");
    styles->require_subcommand(0, 1);
    CLI::App* const list = add_command(*styles, "list", "Every known style, or those that hold a word",
                                       R"(Usage: entrywise styles list [WORD...] [OPTIONS]

Examples:
  entrywise styles list --guide ba-2025
  entrywise styles list smoked porter
)");
    CLI::App* const show = add_command(*styles, "show", "What a style asks for",
                                       R"(Usage: entrywise styles show CODE... [OPTIONS]

Examples:
  entrywise styles show 21A
  entrywise styles show 21A --card
)");
    CLI::App* const compare =
        add_command(*styles, "compare", "Two styles side by side, and what separates them",
                    R"(Usage: entrywise styles compare CODE CODE [OPTIONS]

Examples:
  entrywise styles compare 21A 18B
  entrywise styles compare bjcp-2021/21A ba-2025/03-08
)");
    CLI::App* const validate = add_command(*styles, "validate", "Whether style files are sound",
                                           R"(Usage: entrywise styles validate FILE|DIR... [OPTIONS]

Examples:
  entrywise styles validate mystyles/club/H1.yaml
  entrywise styles validate mystyles
)");
    add_text(*list, "--guide", raw.guide, "GUIDE", "Guides such as ba-2025; all if left out");
    show->add_flag("--card", raw.card, "One page to hold at the table, in the order of judging");
    for (CLI::App* const command : {list, show, compare}) {
        add_format(*command, raw);
        add_look(*command, raw);
        add_styles(*command, raw);
    }
    add_format(*validate, raw);
    add_look(*validate, raw);
    add_styles(*validate, raw);
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
        add_explain(app_, raw_);
        add_rank(app_, raw_);
        add_mend(app_, raw_);
        add_screen(app_, raw_);
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
    void check_format();
    void check_mending();
    void check_screening();

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
    call_.style = raw_.style;
    call_.guide = raw_.guide;
    call_.competition = raw_.competition;
    if (!call_.competition.empty() && !call_.guide.empty()) {
        fault("--guide beside --competition", "one of them: the competition names its guide itself");
    }
    call_.card = raw_.card;
    call_.pick = raw_.pick;
    call_.to = raw_.to.empty() ? raw_.to : one_of("--to", raw_.to, {"recipe", "beerjson"});
    call_.styles_folder = raw_.styles_folder;
    call_.ingredients_folder = raw_.ingredients_folder;
    call_.among = raw_.among;
    call_.notes = raw_.notes;
    call_.measured = raw_.measured;
    call_.scores = raw_.scores;
    if (call_.command == Command::explain && call_.notes.empty() && call_.scores.empty()) {
        fault("no note", "--note with what a judge wrote, such as --note \"thin\"", {}, see_help(*chosen()));
    }
    for (const std::string& note : call_.notes) {
        if (trimmed(note).empty()) {
            fault("an empty note", "--note with what a judge wrote", {}, see_help(*chosen()));
        }
    }
    call_.output = raw_.output;
    call_.ascii = raw_.ascii;
    check_format();
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

void Understanding::check_format() {
    std::vector<std::string> known{"text", "json"};
    switch (call_.command) {
        case Command::check:
        case Command::explain:
        case Command::rank:
        case Command::mend:
            known.emplace_back("html");
            break;
        case Command::screen:
            known = {"text", "csv", "json", "jsonl"};
            break;
        default:
            break;
    }
    const std::string format = one_of("--format", raw_.format, known);
    call_.format = format == "json"    ? Format::json
                   : format == "jsonl" ? Format::jsonl
                   : format == "csv"   ? Format::csv
                   : format == "html"  ? Format::html
                                       : Format::text;
}

void Understanding::check_mending() {
    constexpr double all_points = 50.0;
    call_.brewed = one_of("--stage", raw_.stage, {"recipe", "brewed"}) == "brewed";
    call_.target = number_within("--target", raw_.target, 0.0, all_points);
    call_.with_folder = raw_.with_folder;
    call_.write = raw_.write;
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
    const std::vector<std::string> orders{"entry", "risk", "gain", "category", "status", "strength"};
    const std::string order = one_of("--sort", raw_.sort, orders);
    call_.order = static_cast<ScreenOrder>(std::find(orders.begin(), orders.end(), order) - orders.begin());
    call_.statuses = parts_of(raw_.statuses);
    for (const std::string& status : call_.statuses) {
        one_of("--status", status, {"ready", "look", "move", "incomplete", "unreadable"});
    }
    call_.categories = parts_of(raw_.categories);
    call_.blind = raw_.blind;
    call_.resume = raw_.resume;
    if (const auto threads = number_within("--threads", raw_.threads, 1.0, most_threads)) {
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

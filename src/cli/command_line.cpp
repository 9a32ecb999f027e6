#include "cli/command_line.hpp"

#include <memory>
#include <utility>

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

Acceptance one_of(std::vector<std::string> words) {
    return {Accepted::words, std::move(words), false};
}

}  // namespace

CommandLine::CommandLine() {
    app_.description("Predicts from a beer recipe how a judge would score it against a style.");
    app_.footer(top_usage);
    app_.formatter(std::make_shared<HelpLayout>());
    app_.allow_extras();
    app_.require_subcommand(0, 1);
    app_.set_help_flag("-h,--help", "Tell how to call it, and end");
    app_.add_flag("--version", version_, "Tell the version of program and styles, and end");
    add_check();
    add_explain();
    add_rank();
    add_mend();
    add_screen();
    add_estimate();
    add_convert();
    add_styles_commands();
}

const Acceptance& CommandLine::accepted_by(const CLI::Option& option) const {
    return of_options_.at(&option);
}

const Acceptance& CommandLine::accepted_by(const CLI::App& command) const {
    return of_commands_.at(&command);
}

std::string CommandLine::short_help() {
    return top_usage;
}

CLI::Option& CommandLine::add_text(CLI::App& command, const std::string& name, std::string& value,
                                   const std::string& type, const std::string& description,
                                   Acceptance accepted) {
    CLI::Option* const option = command.add_option(name, value, description)->type_name(type)->take_last();
    of_options_[option] = std::move(accepted);
    return *option;
}

/// An option that may stand several times, a text each time.
CLI::Option& CommandLine::add_texts(CLI::App& command, const std::string& name,
                                    std::vector<std::string>& values, const std::string& type,
                                    const std::string& description, Acceptance accepted) {
    CLI::Option* const option = command.add_option(name, values, description)
                                    ->type_name(type)
                                    ->allow_extra_args(false)
                                    ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    of_options_[option] = std::move(accepted);
    return *option;
}

CLI::App& CommandLine::add_command(CLI::App& parent, const std::string& name, const std::string& description,
                                   const std::string& usage, Acceptance words) {
    CLI::App* const command = parent.add_subcommand(name, description);
    command->footer(usage);
    command->allow_extras();
    of_commands_[command] = std::move(words);
    return *command;
}

void CommandLine::add_output(CLI::App& command) {
    add_text(command, "-o,--output", raw_.output, "FILE", "Write to a file; - is standard output",
             {Accepted::file, {}, false});
}

void CommandLine::add_look(CLI::App& command) {
    add_output(command);
    add_text(command, "--color", raw_.color, "WHEN", "auto, always or never",
             one_of({"auto", "always", "never"}));
    command.add_flag("--ascii", raw_.ascii, "Write plain ASCII characters alone");
    add_text(command, "--width", raw_.width, "N", "Columns of the page, 60 to 160");
}

void CommandLine::add_format(CLI::App& command, const std::vector<std::string>& formats,
                             const std::string& description) {
    add_text(command, "--format", raw_.format, "FORMAT", description, one_of(formats));
}

void CommandLine::add_format(CLI::App& command) {
    add_format(command, {"text", "json"}, "text or json");
}

void CommandLine::add_format_with_pages(CLI::App& command) {
    add_format(command, {"text", "json", "html"}, "text, json, or html for a page to look at");
}

void CommandLine::add_style(CLI::App& command) {
    add_text(command, "--style", raw_.style, "CODE", "Style such as 21A, in place of the declared one",
             {Accepted::style, {}, false});
}

void CommandLine::add_fail_at(CLI::App& command) {
    add_text(command, "--fail-at", raw_.fail_at, "POINTS", "Status 1 if so many points are at risk");
}

void CommandLine::add_styles(CLI::App& command) {
    add_text(command, "--styles", raw_.styles_folder, "DIR", "Folder of styles that add or replace",
             {Accepted::folder, {}, false});
}

void CommandLine::add_ingredients(CLI::App& command) {
    add_text(command, "--ingredients", raw_.ingredients_folder, "DIR",
             "Folder of ingredients that add or replace", {Accepted::folder, {}, false});
}

void CommandLine::add_pick(CLI::App& command) {
    add_text(command, "--pick", raw_.pick, "NAME|N", "Which recipe of a file that holds several");
}

void CommandLine::add_estimate() {
    CLI::App& command = add_command(app_, "estimate", "What a recipe makes, how surely, and from what",
                                    R"(Usage: entrywise estimate RECIPE... [OPTIONS]

Examples:
  entrywise estimate recipes/slack-tide.yaml
  entrywise estimate --format json - < recipes/slack-tide.yaml
)",
                                    {Accepted::file, {}, false});
    add_pick(command);
    add_format(command);
    add_look(command);
    add_ingredients(command);
}

void CommandLine::add_check() {
    CLI::App& command = add_command(app_, "check", "A recipe against one style, as a judge would mark it",
                                    R"(Usage: entrywise check RECIPE... [OPTIONS]

Examples:
  entrywise check recipes/slack-tide.yaml
  entrywise check recipes/slack-tide.yaml --style 21A --fail-at 4
  entrywise check recipes/slack-tide.yaml --format html -o slack-tide.html
)",
                                    {Accepted::file, {}, false});
    add_style(command);
    add_pick(command);
    add_format_with_pages(command);
    add_look(command);
    add_fail_at(command);
    add_styles(command);
    add_ingredients(command);
}

void CommandLine::add_convert() {
    CLI::App& command = add_command(app_, "convert", "A recipe from another format, or to one",
                                    R"(Usage: entrywise convert FILE [--to recipe|beerjson] [-o OUT] [OPTIONS]

Examples:
  entrywise convert beer.xml -o beer.yaml
  entrywise convert recipes/slack-tide.yaml --to beerjson -o slack-tide.json
)",
                                    {Accepted::file, {}, false});
    add_text(command, "--to", raw_.to, "WHAT", "recipe or beerjson; the other one if left out",
             one_of({"recipe", "beerjson"}));
    add_pick(command);
    add_format(command);
    add_output(command);
    add_styles(command);
    add_ingredients(command);
}

void CommandLine::add_explain() {
    CLI::App& command = add_command(app_, "explain", "A judge's notes traced to the recipe",
                                    R"(Usage: entrywise explain RECIPE... --note TEXT... [OPTIONS]

Examples:
  entrywise explain recipes/slack-tide.yaml --note "thin" --note "harsh, hot"
  entrywise explain ale.yaml --note sweet --measured final_gravity=1.020
  entrywise explain ale.yaml --scores aroma=9,flavor=12
)",
                                    {Accepted::file, {}, false});
    add_texts(command, "--note", raw_.notes, "TEXT", "What a judge wrote; may be given several times");
    add_style(command);
    add_texts(command, "--measured", raw_.measured, "KEY=VALUE", "Measured, in place of the recipe's values");
    add_texts(command, "--scores", raw_.scores, "SECTION=POINTS",
              "The judge's points, beside those to expect");
    add_pick(command);
    add_format_with_pages(command);
    add_look(command);
    add_styles(command);
    add_ingredients(command);
}

void CommandLine::add_rank() {
    CLI::App& command = add_command(app_, "rank", "Where to enter a beer: the styles in order",
                                    R"(Usage: entrywise rank RECIPE... [OPTIONS]

Examples:
  entrywise rank recipes/slack-tide.yaml
  entrywise rank recipes/slack-tide.yaml --among 18B,21A,22A
  entrywise rank recipes/slack-tide.yaml --guide all
  entrywise rank recipes/slack-tide.yaml --competition harbor-cup.yaml
)",
                                    {Accepted::file, {}, false});
    add_text(command, "--guide", raw_.guide, "GUIDES", "bjcp-2021 if left out, or ba-2025, or all",
             {Accepted::guide, {}, true});
    add_text(command, "--competition", raw_.competition, "FILE", "Only what that competition accepts",
             {Accepted::file, {}, false});
    add_texts(command, "--among", raw_.among, "CODES", "Only these styles, such as 18B,21A",
              {Accepted::style, {}, true});
    add_style(command);
    add_pick(command);
    add_format_with_pages(command);
    add_look(command);
    add_styles(command);
    add_ingredients(command);
}

void CommandLine::add_mend() {
    CLI::App& command = add_command(app_, "mend", "The least changes that bring a recipe into style",
                                    R"(Usage: entrywise mend RECIPE... [OPTIONS]

Examples:
  entrywise mend recipes/slack-tide.yaml
  entrywise mend recipes/slack-tide.yaml --write slack-tide-mended.yaml
  entrywise mend recipes/low-water.yaml --stage brewed --with recipes
)",
                                    {Accepted::file, {}, false});
    add_style(command);
    add_text(command, "--stage", raw_.stage, "STAGE", "recipe, or brewed for a finished beer",
             one_of({"recipe", "brewed"}));
    add_text(command, "--target", raw_.target, "POINTS", "Points at risk to come down to; 2 if left out");
    add_text(command, "--with", raw_.with_folder, "DIR", "Folder of recipes to blend a finished beer with",
             {Accepted::folder, {}, false});
    add_text(command, "--write", raw_.write, "FILE", "Write the recipe with the least change made",
             {Accepted::file, {}, false});
    add_pick(command);
    add_format_with_pages(command);
    add_look(command);
    add_styles(command);
    add_ingredients(command);
}

void CommandLine::add_screen() {
    CLI::App& command = add_command(app_, "screen", "A club's entries: what to talk about before judging",
                                    R"(Usage: entrywise screen DIR | ENTRIES.csv | - [OPTIONS]

Examples:
  entrywise screen recipes/entries.csv
  entrywise screen recipes --status look,move --sort risk
  entrywise screen entries.csv --competition harbor-cup.yaml
  entrywise screen recipes/entries.csv --format html -o evening.html
  entrywise screen - --format jsonl -o results.jsonl < entries.jsonl
)",
                                    {Accepted::file_or_folder, {}, false});
    add_text(command, "--guide", raw_.guide, "GUIDE",
             "Guide of codes and places; the declared one if left out", {Accepted::guide, {}, false});
    add_text(command, "--competition", raw_.competition, "FILE", "Whose entries these are",
             {Accepted::file, {}, false});
    add_texts(command, "--status", raw_.statuses, "STATUS",
              "Only ready, look, move, incomplete or unreadable ones",
              {Accepted::words, {"ready", "look", "move", "incomplete", "unreadable"}, true});
    add_texts(command, "--category", raw_.categories, "CODES", "Only entries of these styles",
              {Accepted::style, {}, true});
    add_text(command, "--sort", raw_.sort, "BY", "entry, risk, gain, category, status or strength",
             one_of({"entry", "risk", "gain", "category", "status", "strength"}));
    command.add_flag("--blind", raw_.blind, "Tell nothing that may name a brewer");
    add_format(command, {"text", "csv", "json", "jsonl", "html"},
               "text, csv, json, jsonl, or html for a page");
    add_look(command);
    command.add_flag("--resume", raw_.resume, "Go on with an interrupted run of jsonl into a file");
    add_text(command, "--threads", raw_.threads, "N", "Threads at work; as many as cores if left out");
    add_fail_at(command);
    add_styles(command);
    add_ingredients(command);
}

void CommandLine::add_styles_commands() {
    CLI::App& styles = add_command(app_, "styles", "List, show and compare styles, or validate files",
                                   R"(Usage: entrywise styles list | show | compare | validate ... [OPTIONS]

Examples:
  entrywise styles list
  entrywise styles show 21A
)");
    styles.require_subcommand(0, 1);
    CLI::App& list = add_command(styles, "list", "Every known style, or those that hold a word",
                                 R"(Usage: entrywise styles list [WORD...] [OPTIONS]

Examples:
  entrywise styles list --guide ba-2025
  entrywise styles list smoked porter
)");
    CLI::App& show = add_command(styles, "show", "What a style asks for",
                                 R"(Usage: entrywise styles show CODE... [OPTIONS]

Examples:
  entrywise styles show 21A
  entrywise styles show 21A --card
)",
                                 {Accepted::style, {}, false});
    CLI::App& compare = add_command(styles, "compare", "Two styles side by side, and what separates them",
                                    R"(Usage: entrywise styles compare CODE CODE [OPTIONS]

Examples:
  entrywise styles compare 21A 18B
  entrywise styles compare bjcp-2021/21A ba-2025/03-08
)",
                                    {Accepted::style, {}, false});
    CLI::App& validate = add_command(styles, "validate", "Whether style files are sound",
                                     R"(Usage: entrywise styles validate FILE|DIR... [OPTIONS]

Examples:
  entrywise styles validate mystyles/club/H1.yaml
  entrywise styles validate mystyles
)",
                                     {Accepted::file_or_folder, {}, false});
    add_text(list, "--guide", raw_.guide, "GUIDE", "Guides such as ba-2025; all if left out",
             {Accepted::guide, {}, true});
    show.add_flag("--card", raw_.card, "One page to hold at the table, in the order of judging");
    for (CLI::App* const each : {&list, &show, &compare}) {
        CLI::App& command = *each;
        add_format(command);
        add_look(command);
        add_styles(command);
    }
    add_format(validate);
    add_look(validate);
    add_styles(validate);
}

}  // namespace entrywise

#pragma once

#include <CLI/CLI.hpp>

#include <map>
#include <string>
#include <vector>

#include "cli/raw_options.hpp"

namespace entrywise {

/// What a value of an option or a word behind a command may be.
enum class Accepted { anything, words, file, folder, file_or_folder, style, guide };

struct Acceptance {
    Accepted kind = Accepted::anything;
    std::vector<std::string> words;  ///< where it is one of these
    bool several = false;            ///< apart by commas
};

/// The commands and options that there are, with their help: the only place that knows them. Parsing fills
/// the raw options, which are checked elsewhere.
class CommandLine {
  public:
    CommandLine();

    CLI::App& app() { return app_; }
    const CLI::App& app() const { return app_; }
    const RawOptions& raw() const { return raw_; }
    bool version_is_wanted() const { return version_; }

    /// What stands behind an option, and behind a command.
    const Acceptance& accepted_by(const CLI::Option& option) const;
    const Acceptance& accepted_by(const CLI::App& command) const;

    /// What is printed where nothing is asked.
    static std::string short_help();

  private:
    CLI::Option& add_text(CLI::App& command, const std::string& name, std::string& value,
                          const std::string& type, const std::string& description, Acceptance accepted = {});
    CLI::Option& add_texts(CLI::App& command, const std::string& name, std::vector<std::string>& values,
                           const std::string& type, const std::string& description, Acceptance accepted = {});
    CLI::App& add_command(CLI::App& parent, const std::string& name, const std::string& description,
                          const std::string& usage, Acceptance words = {});

    void add_output(CLI::App& command);
    void add_look(CLI::App& command);
    void add_format(CLI::App& command, const std::vector<std::string>& formats,
                    const std::string& description);
    void add_format(CLI::App& command);
    void add_format_with_pages(CLI::App& command);
    void add_style(CLI::App& command);
    void add_fail_at(CLI::App& command);
    void add_styles(CLI::App& command);
    void add_ingredients(CLI::App& command);
    void add_pick(CLI::App& command);

    void add_estimate();
    void add_check();
    void add_convert();
    void add_explain();
    void add_rank();
    void add_mend();
    void add_screen();
    void add_styles_commands();

    RawOptions raw_;
    bool version_ = false;
    CLI::App app_;
    std::map<const CLI::Option*, Acceptance> of_options_;
    std::map<const CLI::App*, Acceptance> of_commands_;
};

}  // namespace entrywise

#include "cli/entry_source.hpp"

#include <sys/stat.h>
#include <unistd.h>

#include <system_error>
#include <utility>
#include <vector>

#include "base/file.hpp"
#include "base/line_reader.hpp"
#include "base/text.hpp"
#include "cli/streams.hpp"
#include "cli/style_files.hpp"
#include "screening/entry_folder.hpp"
#include "screening/entry_line.hpp"
#include "screening/entry_table.hpp"
#include "screening/fingerprint.hpp"

namespace entrywise {

namespace {

/// Entries that are all known beforehand.
class ListedEntries : public EntrySource {
  public:
    explicit ListedEntries(std::vector<ClubEntry> entries) : entries_(std::move(entries)) {}

    std::optional<NumberedEntry> next() override {
        if (at_ == entries_.size()) {
            return std::nullopt;
        }
        ClubEntry& entry = entries_[at_++];
        fingerprint_.add(entry.number);
        fingerprint_.add(entry.recipe_file);
        return NumberedEntry{std::move(entry), fingerprint_.value(),
                             static_cast<double>(at_) / static_cast<double>(entries_.size())};
    }
    std::optional<Fault> fault() const override { return std::nullopt; }

  private:
    std::vector<ClubEntry> entries_;
    std::size_t at_ = 0;
    Fingerprint fingerprint_;
};

/// Entries that come a line each.
class EntryLines : public EntrySource {
  public:
    EntryLines() {
        struct stat status {};
        if (::fstat(STDIN_FILENO, &status) == 0 && S_ISREG(status.st_mode) && status.st_size > 0) {
            all_bytes_ = static_cast<double>(status.st_size);
        }
    }

    std::optional<NumberedEntry> next() override {
        while (auto line = lines_.next()) {
            fingerprint_.add(line->text);
            if (line->too_long || !trimmed(line->text).empty()) {
                return NumberedEntry{entry_of_line(*line, "standard input"), fingerprint_.value(),
                                     share_read()};
            }
        }
        return std::nullopt;
    }
    std::optional<Fault> fault() const override {
        if (lines_.error() == 0) {
            return std::nullopt;
        }
        return Fault{.place = {"standard input", {}},
                     .found = std::generic_category().message(lines_.error()),
                     .expected = "entries, a JSON object a line",
                     .nearest = {},
                     .remedy = {}};
    }

  private:
    std::optional<double> share_read() const {
        return all_bytes_ ? std::optional(static_cast<double>(lines_.bytes_read()) / *all_bytes_)
                          : std::nullopt;
    }

    LineReader lines_{STDIN_FILENO, most_entry_line_bytes};
    Fingerprint fingerprint_;
    std::optional<double> all_bytes_;
};

Outcome<std::vector<ClubEntry>> entries_in_table(const std::string& file) {
    const Outcome<std::string> text = read_file(file, most_table_bytes);
    return text ? read_entry_table(*text, file) : Outcome<std::vector<ClubEntry>>(text.faults);
}

/// The name of a file may be that of its brewer.
void number_blindly(std::vector<ClubEntry>& entries) {
    for (std::size_t index = 0; index < entries.size(); ++index) {
        entries[index].number = std::to_string(index + 1);
    }
}

}  // namespace

Outcome<std::unique_ptr<EntrySource>> open_entries(const Call& call) {
    const std::string& input = call.words.front();
    if (input == "-") {
        if (input_is_typed()) {
            tell("Reading entries from standard input, a JSON object a line; Ctrl-D ends it.\n");
        }
        return std::unique_ptr<EntrySource>(std::make_unique<EntryLines>());
    }
    const bool folder = is_folder(input);
    Outcome<std::vector<ClubEntry>> entries = folder ? entries_in_folder(input) : entries_in_table(input);
    if (!entries) {
        return entries.faults;
    }
    if (folder && call.blind) {
        number_blindly(*entries.value);
    }
    return std::unique_ptr<EntrySource>(std::make_unique<ListedEntries>(*std::move(entries.value)));
}

}  // namespace entrywise

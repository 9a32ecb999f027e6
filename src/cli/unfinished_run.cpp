#include "cli/unfinished_run.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <filesystem>
#include <system_error>

#include "base/file.hpp"
#include "base/text.hpp"
#include "report/json_text.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

constexpr const char* format_name = "entrywise/unfinished/1";

std::string file_of(const Call& call) {
    return name_beside(call.output, "resume");
}

/// What decides the results besides the entries themselves.
std::string said_by(const Call& call) {
    return fmt::format(
        "entrywise {} {} --guide '{}' --status '{}' --category '{}' --styles '{}' --ingredients '{}'{}",
        program_version(), call.words.front() == "-" ? "lines" : call.words.front(), call.guide,
        joined(call.statuses, ","), joined(call.categories, ","), call.styles_folder, call.ingredients_folder,
        call.blind ? " --blind" : "");
}

Fault refused(const std::string& file, std::string found, std::string expected) {
    return {.place = {file, {}},
            .found = std::move(found),
            .expected = std::move(expected),
            .nearest = {},
            .remedy = "Nothing was written. Without --resume the run starts from the beginning."};
}

std::optional<std::uint64_t> number_in(const Json& object, const char* key) {
    const bool is_there = object.is_object() && object.contains(key) && object.at(key).is_number_unsigned();
    return is_there ? std::optional(object.at(key).get<std::uint64_t>()) : std::nullopt;
}

std::string text_in(const Json& object, const char* key) {
    const bool is_there = object.is_object() && object.contains(key) && object.at(key).is_string();
    return is_there ? object.at(key).get<std::string>() : std::string();
}

}  // namespace

Outcome<std::optional<UnfinishedRun>> unfinished_run(const Call& call) {
    constexpr std::size_t most_bytes = 65536;
    const std::string file = file_of(call);
    std::error_code unknown;
    if (!std::filesystem::exists(file, unknown)) {
        return std::optional<UnfinishedRun>();
    }
    const Outcome<std::string> text = read_file(file, most_bytes);
    if (!text) {
        return text.faults;
    }
    const Json said = Json::parse(*text, nullptr, false);
    const auto entries = number_in(said, "entries");
    const auto input = number_in(said, "input");
    const auto bytes = number_in(said, "bytes");
    const auto status = number_in(said, "status");
    if (text_in(said, "format") != format_name || !entries || !input || !bytes || !status) {
        return refused(file, "something else", "what an interrupted run wrote down");
    }
    if (text_in(said, "call") != said_by(call)) {
        return refused(file, "an interrupted run of another call", "the call that was interrupted");
    }
    // Where the unfinished file is gone, it took its place or was taken away: there is nothing to continue.
    if (!std::filesystem::exists(unfinished_name(call.output), unknown)) {
        return std::optional<UnfinishedRun>();
    }
    return std::optional(UnfinishedRun{*entries, *input, *bytes, static_cast<ExitStatus>(*status)});
}

std::optional<Fault> write_down(const UnfinishedRun& run, const Call& call) {
    Json said;
    said["format"] = format_name;
    said["call"] = said_by(call);
    said["entries"] = run.entries;
    said["input"] = run.input;
    said["bytes"] = run.bytes;
    said["status"] = static_cast<std::uint64_t>(run.status);
    return write_file_whole(file_of(call), json_text(said));
}

void forget_unfinished_run(const Call& call) {
    ::unlink(file_of(call).c_str());
}

}  // namespace entrywise

#include <filesystem>

#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/streams.hpp"
#include "reading/document_file.hpp"
#include "reading/style_reader.hpp"
#include "report/style_text.hpp"

namespace entrywise {

namespace {

/// A style file is named after its code and stands in the folder of its guide.
Outcome<Style> style_in_file(const std::string& path) {
    const Outcome<Node> document = read_document_file(path);
    if (!document) {
        return document.faults;
    }
    const std::filesystem::path file = std::filesystem::absolute(path);
    const StyleName name{file.parent_path().filename().string(), file.stem().string()};
    return read_style(*document, name, path);
}

}  // namespace

ExitStatus styles_list_command(const Call& call) {
    const Outcome<Library> library = open_library_for(call);
    if (!library) {
        return report_faults(call, library.faults);
    }
    const Outcome<std::vector<Style>> styles = all_styles(*library);
    if (!styles) {
        return report_faults(call, styles.faults);
    }
    return deliver_or_tell(call, style_list_text(*styles, text_style_for(call)));
}

ExitStatus styles_show_command(const Call& call) {
    const Outcome<Library> library = open_library_for(call);
    if (!library) {
        return report_faults(call, library.faults);
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Style> style = style_called(*library, word);
        if (!style) {
            return style.faults;
        }
        return Report{style_text(*style, text_style_for(call)), {}, ExitStatus::done};
    });
}

ExitStatus styles_validate_command(const Call& call) {
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Style> style = style_in_file(word);
        if (!style) {
            return style.faults;
        }
        Report report;
        report.text =
            shown(word + ": sound, " + style->code + ' ' + style->name, text_style_for(call)) + '\n';
        report.document["format"] = "entrywise/validation/1";
        report.document["file"] = word;
        report.document["sound"] = true;
        return report;
    });
}

}  // namespace entrywise

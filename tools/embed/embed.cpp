// Writes data files into the source text of the program: reads each, refuses it with located faults if it is
// not sound, and writes its document in packed form, that of an ingredient file entry by entry. Use: embed
// OUTPUT ROOT FILE...   where each FILE lies below ROOT and is known to the program by its path from there.

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/file.hpp"
#include "base/text.hpp"
#include "reading/document_file.hpp"
#include "reading/fault_log.hpp"
#include "reading/ingredient_reader.hpp"
#include "reading/packed_document.hpp"
#include "reading/perception_reader.hpp"
#include "reading/remark_reader.hpp"
#include "reading/style_reader.hpp"

namespace {

using namespace entrywise;

struct Packed {
    std::string path;
    std::string bytes;
};

/// The names that an entry of an ingredient file goes by.
std::vector<std::string> names_of(const Node& entry) {
    std::vector<std::string> names;
    for (const char* key : {"name", "class"}) {
        if (const Node* name = value_of(entry, key)) {
            names.push_back(lowered(name->text));
        }
    }
    if (const Node* aliases = value_of(entry, "aliases")) {
        for (const Node& alias : aliases->items) {
            names.push_back(lowered(alias.text));
        }
    }
    return names;
}

/// A data file as one document, an ingredient file as one for each name in it.
std::vector<Packed> packed_file(const Node& document, const std::string& path) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 3> kinds{
        {{"fermentables", "fermentable"}, {"hops", "hop"}, {"yeasts", "yeast"}}};
    for (const auto& [list, kind] : kinds) {
        const Node* entries = value_of(document, list);
        if (entries == nullptr) {
            continue;
        }
        std::vector<Packed> documents;
        for (const Node& entry : entries->items) {
            const std::string bytes = packed(entry);
            for (const std::string& name : names_of(entry)) {
                documents.push_back({fmt::format("ingredients/{}/{}", kind, name), bytes});
            }
        }
        return documents;
    }
    return {{path, packed(document)}};
}

/// What is wrong with a document of a kind that has a reader; other kinds are checked where they are used.
std::vector<Fault> faults_in(const Node& document, const std::filesystem::path& file) {
    const Node* format = value_of(document, "format");
    const std::string kind = format == nullptr ? std::string() : format->text;
    if (kind.empty()) {
        FaultLog faults(file.string());
        faults.add(document.position,
                   {.found = "no format line", .expected = "'format: entrywise/<kind>/1'"});
        return faults.in_order();
    }
    if (kind.starts_with("entrywise/fermentables/")) {
        return read_fermentables(document, file).faults;
    }
    if (kind.starts_with("entrywise/hops/")) {
        return read_hops(document, file).faults;
    }
    if (kind.starts_with("entrywise/yeast/")) {
        return read_yeasts(document, file).faults;
    }
    if (kind.starts_with("entrywise/perception/")) {
        return read_perception(document, file).faults;
    }
    if (kind.starts_with("entrywise/remarks/")) {
        return read_remarks(document, file).faults;
    }
    if (kind.starts_with("entrywise/style/")) {
        const StyleName name{file.parent_path().filename().string(), file.stem().string()};
        return read_style(document, name, file).faults;
    }
    return {};
}

bool tell(const std::vector<Fault>& faults) {
    for (const Fault& fault : faults) {
        fmt::print(stderr, "{}\n", to_line(fault));
    }
    return faults.empty();
}

bool is_plain(char letter) {
    return (letter >= 'A' && letter <= 'Z') || (letter >= 'a' && letter <= 'z') || letter == ' ' ||
           letter == '-';
}

/// The bytes between quotation marks, broken into lines. Three octal digits make an escape complete, whatever
/// follows.
std::string literal(std::string_view bytes) {
    constexpr std::size_t bytes_a_line = 120;
    std::string text;
    for (std::size_t index = 0; index < bytes.size(); ++index) {
        if (index % bytes_a_line == 0) {
            text += index == 0 ? "\n    \"" : "\"\n    \"";
        }
        const char letter = bytes[index];
        text += is_plain(letter)
                    ? std::string(1, letter)
                    : fmt::format("\\{:03o}", static_cast<unsigned>(static_cast<unsigned char>(letter)));
    }
    return text + '"';
}

std::string source_of(const std::vector<Packed>& documents) {
    std::string text =
        "#include \"reading/embedded.hpp\"\n\n"
        "namespace entrywise {\n\n"
        "std::span<const EmbeddedDocument> embedded_documents() {\n"
        "    static constexpr EmbeddedDocument documents[] = {\n";
    for (const Packed& document : documents) {
        text += fmt::format("    {{\"{}\", std::string_view({},\n    {})}},\n", document.path,
                            literal(document.bytes), document.bytes.size());
    }
    return text + "    };\n    return documents;\n}\n\n}  // namespace entrywise\n";
}

}  // namespace

int main(int argument_count, char** arguments) {
    if (argument_count < 4) {
        fmt::print(stderr, "Use: embed OUTPUT ROOT FILE...\n");
        return 2;
    }
    const std::vector<std::string> words(arguments + 1, arguments + argument_count);
    std::vector<Packed> documents;
    bool sound = true;
    for (std::size_t index = 2; index < words.size(); ++index) {
        const auto document = read_document_file(words[index]);
        const bool read = tell(document.faults) && tell(faults_in(*document, words[index]));
        sound = sound && read;
        if (read) {
            const auto path = std::filesystem::path(words[index]).lexically_relative(words[1]);
            const auto more = packed_file(*document, path.generic_string());
            documents.insert(documents.end(), more.begin(), more.end());
        }
    }
    if (!sound) {
        return 1;
    }
    std::sort(documents.begin(), documents.end(),
              [](const Packed& left, const Packed& right) { return left.path < right.path; });
    if (const auto fault = write_file_whole(words[0], source_of(documents))) {
        tell({*fault});
        return 1;
    }
    return 0;
}

#include "reading/document_file.hpp"

#include "base/file.hpp"
#include "reading/yaml_document.hpp"

namespace entrywise {

Outcome<Node> read_document_file(const std::string& path) {
    const auto text = read_file(path, most_document_bytes);
    if (!text) {
        return text.faults;
    }
    return yaml_document(*text, shown_path(path));
}

std::string shown_path(const std::string& path) {
    return path == "-" ? "standard input" : path;
}

}  // namespace entrywise

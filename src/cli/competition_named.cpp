#include "cli/competition_named.hpp"

#include "reading/competition_reader.hpp"
#include "reading/document_file.hpp"

namespace entrywise {

Outcome<Competition> competition_named(const std::string& file, const Library& library) {
    const Outcome<Node> document = read_document_file(file);
    return document ? read_competition(*document, library, shown_path(file))
                    : Outcome<Competition>(document.faults);
}

}  // namespace entrywise

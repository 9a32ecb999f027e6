#pragma once

#include <string>
#include <vector>

namespace entrywise {

/// A report as a part of an HTML page: markup with one heading of the first rank.
struct Article {
    std::string title;  ///< plain text
    std::string body;
};

/// A whole page, in one file that needs no other: one report as it is, several below each other with a table
/// of contents. It asks for nothing from anywhere, and says so to the browser. The same reports give the same
/// bytes.
std::string page_of(const std::vector<Article>& articles);

}  // namespace entrywise

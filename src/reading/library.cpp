#include "reading/library.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/packed_document.hpp"
#include "reading/style_reader.hpp"

namespace entrywise {

namespace {

constexpr std::string_view styles_folder = "styles/";
constexpr std::string_view suffix = ".yaml";

std::string path_of(const StyleName& name) {
    return fmt::format("{}{}/{}{}", styles_folder, name.guide, name.code, suffix);
}

/// The style whose file has this path; nothing for other data files.
std::optional<StyleName> style_of_path(std::string_view path) {
    if (!path.starts_with(styles_folder) || !path.ends_with(suffix)) {
        return std::nullopt;
    }
    path.remove_prefix(styles_folder.size());
    path.remove_suffix(suffix.size());
    const auto slash = path.find('/');
    if (slash == std::string_view::npos) {
        return std::nullopt;
    }
    return StyleName{std::string(path.substr(0, slash)), std::string(path.substr(slash + 1))};
}

/// Orders codes as guides do: by number first, then by what stands behind it; codes without a number come
/// last.
bool comes_before(const StyleName& left, const StyleName& right) {
    const auto key = [](const StyleName& name) {
        const auto digits = std::min(name.code.find_first_not_of("0123456789"), name.code.size());
        return std::make_tuple(std::string_view(name.guide), digits == 0, digits,
                               std::string_view(name.code));
    };
    return key(left) < key(right);
}

}  // namespace

std::string Library::file_of(const std::string& path) const {
    const auto outside = outside_.file_of.find(path);
    return outside == outside_.file_of.end() ? path : outside->second;
}

Outcome<Node> Library::document(const std::string& path) const {
    const auto outside = outside_.file_of.find(path);
    if (outside != outside_.file_of.end()) {
        return outside_.read(outside->second);
    }
    const EmbeddedDocument* embedded = find_document(embedded_, path);
    auto node = embedded == nullptr ? std::nullopt : unpacked(embedded->bytes);
    if (!node) {
        Fault fault;
        fault.place.file = path;
        fault.found = embedded == nullptr ? "no such data file" : "a damaged data file in the program";
        fault.expected = "a data file of the program";
        return fault;
    }
    return std::move(*node);
}

std::vector<StyleName> Library::style_names_of_files() const {
    std::vector<StyleName> names;
    const auto add = [&](std::string_view path) {
        if (auto name = style_of_path(path)) {
            names.push_back(std::move(*name));
        }
    };
    for (const EmbeddedDocument& embedded : embedded_) {
        add(embedded.path);
    }
    for (const auto& [path, file] : outside_.file_of) {
        add(path);
    }
    return names;
}

std::vector<StyleName> Library::all_style_names() const {
    std::vector<StyleName> names = style_names_of_files();
    std::sort(names.begin(), names.end(), comes_before);
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

std::vector<std::string> Library::guides() const {
    std::set<std::string> guides;
    for (const StyleName& name : style_names_of_files()) {
        guides.insert(name.guide);
    }
    return {guides.begin(), guides.end()};
}

std::vector<StyleName> Library::style_names(const std::string& guide) const {
    std::vector<StyleName> names = all_style_names();
    std::erase_if(names, [&](const StyleName& name) { return lowered(name.guide) != lowered(guide); });
    return names;
}

std::optional<StyleName> Library::known_style(const StyleName& name) const {
    const std::string path = path_of(name);
    if (outside_.file_of.contains(path) || find_document(embedded_, path) != nullptr) {
        return name;
    }
    for (const StyleName& known : style_names(name.guide)) {
        if (lowered(known.code) == lowered(name.code)) {
            return known;
        }
    }
    return std::nullopt;
}

void Library::keep(const std::vector<Style>& styles) {
    for (const Style& style : styles) {
        kept_styles_.insert_or_assign({style.guide, style.code}, style);
    }
}

Outcome<Style> Library::style(const StyleName& name) const {
    if (const auto kept = kept_styles_.find({name.guide, name.code}); kept != kept_styles_.end()) {
        return kept->second;
    }
    const auto known = known_style(name);
    if (!known) {
        return unknown_style(name);
    }
    const std::string path = path_of(*known);
    const auto found = document(path);
    if (!found) {
        return found.faults;
    }
    return read_style(*found, *known, file_of(path));
}

const std::vector<std::string>& Library::titles_in(const std::string& known_guide) const {
    std::call_once(titles_->read, [this] {
        for (const StyleName& name : all_style_names()) {
            const auto read = style(name);
            titles_->of_guide[lowered(name.guide)].push_back(read ? lowered(read->name) : std::string());
        }
    });
    return titles_->of_guide.at(lowered(known_guide));
}

Fault Library::unknown_style(const StyleName& name) const {
    Fault fault;
    fault.found = fmt::format("no style '{}' in the guide '{}'", name.code, name.guide);
    fault.expected = "the code of a known style";
    fault.remedy = "List the styles to see their codes.";
    const std::vector<StyleName> known = style_names(name.guide);
    if (known.empty()) {
        fault.found = fmt::format("the unknown guide '{}'", name.guide);
        fault.expected = fmt::format("a style of {}", listed(guides()));
        fault.nearest = nearest_word(name.guide, guides());
        return fault;
    }
    std::vector<std::string> codes;
    for (const StyleName& style_name : known) {
        codes.push_back(style_name.code);
    }
    fault.nearest = nearest_word(name.code, codes);
    const std::vector<std::string>& style_titles = titles_in(name.guide);
    std::string title = lowered(name.code);
    std::replace(title.begin(), title.end(), '-', ' ');
    const auto named = std::find(style_titles.begin(), style_titles.end(), nearest_word(title, style_titles));
    if (fault.nearest.empty() && named != style_titles.end() && !named->empty()) {
        fault.nearest = codes[static_cast<std::size_t>(named - style_titles.begin())];
    }
    return fault;
}

}  // namespace entrywise

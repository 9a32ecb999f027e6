#include "report/filled_template.hpp"

#include <kainjow/mustache.hpp>

#include <algorithm>
#include <utility>

#include "base/text.hpp"
#include "report/page_parts.hpp"

namespace entrywise {

namespace {

using kainjow::mustache::data;
using kainjow::mustache::mustache;

std::string part_named(std::string_view name) {
    const auto parts = page_parts();
    const auto found =
        std::find_if(parts.begin(), parts.end(), [name](const PagePart& part) { return part.name == name; });
    return found == parts.end() ? std::string() : std::string(found->text);
}

data data_of(const Json& values);

data list_of(const Json& values) {
    data list{data::type::list};
    for (const Json& value : values) {
        list << data_of(value);
    }
    return list;
}

data object_of(const Json& values) {
    data object{data::type::object};
    for (const auto& [key, value] : values.items()) {
        object.set(key, data_of(value));
    }
    return object;
}

/// An empty text counts as nothing, so that a section of its name does not stand.
data data_of(const Json& values) {
    if (values.is_object()) {
        return object_of(values);
    }
    if (values.is_array()) {
        return list_of(values);
    }
    if (values.is_string()) {
        const auto& text = values.get_ref<const std::string&>();
        return text.empty() ? data(data::type::bool_false) : data(text);
    }
    const bool holds = values.is_boolean() && values.get<bool>();
    return data(holds ? data::type::bool_true : data::type::bool_false);
}

}  // namespace

std::string filled(std::string_view template_name, const Json& values) {
    mustache page(part_named(template_name));
    page.set_custom_escape([](const std::string& text) { return escaped(text); });
    data all = data_of(values);
    for (const PagePart& part : page_parts()) {
        const std::string_view name = part.name.substr(0, part.name.find('.'));
        all.set(std::string(name) + "_part",
                data(kainjow::mustache::partial([text = std::string(part.text)] { return text; })));
    }
    return page.render(all);
}

std::string escaped(std::string_view text) {
    std::string result;
    for (const char letter : visible(text)) {
        switch (letter) {
            case '&':
                result += "&amp;";
                break;
            case '<':
                result += "&lt;";
                break;
            case '>':
                result += "&gt;";
                break;
            case '"':
                result += "&quot;";
                break;
            case '\'':
                result += "&#39;";
                break;
            default:
                result += letter;
        }
    }
    return result;
}

}  // namespace entrywise

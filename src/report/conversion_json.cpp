#include "report/conversion_json.hpp"

namespace entrywise {

namespace {

Json json_of(const Remark& remark) {
    Json json;
    json["file"] = remark.place.file;
    json["line"] = json_line(remark.place.position.line);
    json["column"] = json_line(remark.place.position.column);
    json["kind"] = name_of(remark.kind);
    json["text"] = remark.text;
    return json;
}

}  // namespace

Json conversion_json(const Recipe& recipe, const std::string& to, const std::string& text,
                     const std::vector<Remark>& remarks) {
    Json document;
    document["format"] = "entrywise/convert/1";
    document["recipe"] = json_recipe(recipe);
    document["to"] = to;
    document["text"] = text;
    document["findings"] = Json::array();
    for (const Remark& remark : remarks) {
        document["findings"].push_back(json_of(remark));
    }
    return document;
}

}  // namespace entrywise

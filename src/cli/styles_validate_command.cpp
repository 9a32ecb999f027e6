#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <utility>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/streams.hpp"
#include "cli/style_files.hpp"
#include "reading/competition_reader.hpp"
#include "reading/document_file.hpp"
#include "reading/perception_reader.hpp"
#include "reading/phrase_reader.hpp"
#include "reading/remark_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "reading/style_reader.hpp"
#include "reading/style_remarks.hpp"
#include "report/fault_json.hpp"
#include "report/fault_text.hpp"

namespace entrywise {

namespace {

/// A file as it was found: a style, or one of the files that stand beside the guides.
struct Validated {
    std::string file;
    std::optional<Style> style;
    std::vector<Fault> faults;
    std::vector<Fault> remarks;
};

/// What one word of the call led to.
struct ValidatedWord {
    std::string word;
    bool is_folder = false;
    std::vector<Validated> files;
    std::vector<Fault> faults;  ///< of the folder itself
};

/// What style files are held against: all that is built in.
struct Background {
    Knowledge knowledge;
    StyleVocabulary vocabulary;
};

Outcome<Background> background_for(const Call& call) {
    Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return knowledge.faults;
    }
    const Outcome<std::vector<Style>> styles = all_styles(knowledge->library);
    if (!styles) {
        return styles.faults;
    }
    StyleVocabulary vocabulary = vocabulary_of(*styles, knowledge->handbook.phrases);
    return Background{*std::move(knowledge.value), std::move(vocabulary)};
}

/// A style file is named after its code and stands in the folder of its guide.
StyleName name_of_file(const std::string& path) {
    const std::filesystem::path file = std::filesystem::absolute(path);
    return {file.parent_path().filename().string(), file.stem().string()};
}

std::vector<std::string> codes_known_to(const std::string& file, const Library& library) {
    std::vector<std::string> codes = codes_beside(file);
    for (const StyleName& name : library.style_names(name_of_file(file).guide)) {
        codes.push_back(name.code);
    }
    return codes;
}

Validated validated_style(const Node& document, const std::string& file, const Background& background) {
    Outcome<Style> style = read_style(document, name_of_file(file), file);
    Validated result{.file = file, .style = {}, .faults = style.faults, .remarks = {}};
    if (style) {
        const Library& library = background.knowledge.library;
        result.remarks = style_remarks(document, *style, background.vocabulary, library.ingredients(),
                                       codes_known_to(file, library));
        result.style = std::move(style.value);
    }
    return result;
}

Validated validated_competition(const Node& document, const std::string& file, const Background& background) {
    const std::string name = shown_path(file);
    const Outcome<Competition> competition = read_competition(document, background.knowledge.library, name);
    Validated result{.file = file, .style = {}, .faults = competition.faults, .remarks = {}};
    if (competition) {
        result.remarks = competition_remarks(document, *competition, background.vocabulary.declares);
    }
    return result;
}

/// By its format line a file is one of those that stand beside the guides, or else it should be a style.
Validated validated(const std::string& file, const Background& background) {
    const Outcome<Node> document = read_document_file(file);
    if (!document) {
        return {.file = file, .style = {}, .faults = document.faults, .remarks = {}};
    }
    const Node* format = value_of(*document, "format");
    const std::string kind = format == nullptr ? std::string() : format->text;
    const std::string name = shown_path(file);
    if (kind.starts_with("entrywise/sheet/")) {
        return {.file = file, .style = {}, .faults = read_score_sheet(*document, name).faults, .remarks = {}};
    }
    if (kind.starts_with("entrywise/remarks/")) {
        return {.file = file, .style = {}, .faults = read_remarks(*document, name).faults, .remarks = {}};
    }
    if (kind.starts_with("entrywise/phrases/")) {
        return {.file = file, .style = {}, .faults = read_phrases(*document, name).faults, .remarks = {}};
    }
    if (kind.starts_with("entrywise/perception/")) {
        return {.file = file, .style = {}, .faults = read_perception(*document, name).faults, .remarks = {}};
    }
    if (kind.starts_with("entrywise/competition/")) {
        return validated_competition(*document, file, background);
    }
    return validated_style(*document, file, background);
}

ValidatedWord validated_word(const std::string& word, const Background& background) {
    ValidatedWord result{.word = word, .is_folder = is_folder(word), .files = {}, .faults = {}};
    StyleFiles found = result.is_folder ? style_files_in(word) : StyleFiles{{word}, {}};
    result.faults = std::move(found.faults);
    for (const std::string& file : found.files) {
        result.files.push_back(validated(file, background));
    }
    return result;
}

Fault twin_of(const Style& style, const Style& earlier, const std::string& what,
              const std::string& expected) {
    return {.place = {style.file, {}},
            .found = fmt::format("{} as in {}", what, earlier.file),
            .expected = expected,
            .nearest = {},
            .remedy = {}};
}

/// Tells of codes that differ by case alone, of which only one can be found, and of names that occur twice.
void tell_twins(std::vector<ValidatedWord>& words) {
    std::map<std::pair<std::string, std::string>, const Style*> by_code;
    std::map<std::pair<std::string, std::string>, const Style*> by_name;
    for (ValidatedWord& word : words) {
        for (Validated& file : word.files) {
            if (!file.style) {
                continue;
            }
            const Style& style = *file.style;
            const auto code = by_code.try_emplace({lowered(style.guide), lowered(style.code)}, &style);
            const auto name = by_name.try_emplace({lowered(style.guide), lowered(style.name)}, &style);
            if (!code.second && code.first->second->code != style.code) {
                file.faults.push_back(twin_of(style, *code.first->second,
                                              fmt::format("the code '{}'", style.code),
                                              "codes that differ by more than case"));
            } else if (!name.second && name.first->second->code != style.code) {
                file.remarks.push_back(twin_of(style, *name.first->second,
                                               fmt::format("the name '{}'", style.name),
                                               "each name once in a guide"));
            }
        }
    }
}

std::string counted(std::size_t count, std::string_view thing) {
    return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
}

std::string text_of(const ValidatedWord& word, const TextStyle& style) {
    std::string text;
    const auto wrong = static_cast<std::size_t>(std::count_if(
        word.files.begin(), word.files.end(), [](const Validated& file) { return !file.faults.empty(); }));
    if (word.is_folder) {
        text = fmt::format("{}: {}, {}\n", word.word, counted(word.files.size(), "file"),
                           wrong == 0 ? "all sound" : fmt::format("{} not sound", wrong));
    } else if (wrong == 0 && !word.files.empty()) {
        const auto& found = word.files.front().style;
        text = fmt::format("{}: sound{}\n", shown_path(word.word),
                           found ? fmt::format(", {} {}", found->code, found->name) : "");
    }
    text = text.empty() ? text : shown(text.substr(0, text.size() - 1), style) + '\n';
    std::string remarks;
    for (const Validated& file : word.files) {
        for (const Fault& remark : file.remarks) {
            remarks += shown(to_line(remark), style) + '\n';
        }
    }
    return remarks.empty() ? text : text + "Worth a look:\n" + remarks;
}

Json json_of(const Validated& file) {
    if (!file.faults.empty()) {
        return fault_json(file.faults);
    }
    Json document;
    document["format"] = "entrywise/validation/1";
    document["file"] = shown_path(file.file);
    document["sound"] = true;
    document["style"] =
        file.style
            ? Json{{"guide", file.style->guide}, {"code", file.style->code}, {"name", file.style->name}}
            : Json(nullptr);
    document["remarks"] = fault_list_json(file.remarks);
    return document;
}

std::string json_of(const std::vector<ValidatedWord>& words) {
    Json documents = Json::array();
    for (const ValidatedWord& word : words) {
        if (!word.faults.empty()) {
            documents.push_back(fault_json(word.faults));
        }
        for (const Validated& file : word.files) {
            documents.push_back(json_of(file));
        }
    }
    const bool is_one = documents.size() == 1 && !words.front().is_folder;
    return json_text(is_one ? documents.front() : documents);
}

std::vector<Fault> faults_of(const std::vector<ValidatedWord>& words) {
    std::vector<Fault> faults;
    for (const ValidatedWord& word : words) {
        faults.insert(faults.end(), word.faults.begin(), word.faults.end());
        for (const Validated& file : word.files) {
            faults.insert(faults.end(), file.faults.begin(), file.faults.end());
        }
    }
    return faults;
}

}  // namespace

ExitStatus styles_validate_command(const Call& call) {
    const Outcome<Background> background = background_for(call);
    if (!background) {
        return report_faults(call, background.faults);
    }
    std::vector<ValidatedWord> words;
    for (const std::string& word : call.words) {
        words.push_back(validated_word(word, *background));
    }
    tell_twins(words);
    std::string result;
    if (call.format == Format::json) {
        result = json_of(words);
    } else {
        for (const ValidatedWord& word : words) {
            result += text_of(word, text_style_for(call));
        }
    }
    const ExitStatus delivered = result.empty() ? ExitStatus::done : deliver_or_tell(call, result);
    const std::vector<Fault> faults = faults_of(words);
    tell(fault_text(faults));
    return worse(delivered, faults.empty() ? ExitStatus::done : ExitStatus::wrong_input);
}

}  // namespace entrywise

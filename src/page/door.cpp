#include "page/door.hpp"

#include <array>
#include <optional>
#include <utility>

#include "advice/check.hpp"
#include "advice/explain.hpp"
#include "advice/mend.hpp"
#include "advice/ranking.hpp"
#include "interchange/beerjson_writer.hpp"
#include "interchange/json_document.hpp"
#include "interchange/recipe_writer.hpp"
#include "judging/specialty.hpp"
#include "judging/tasting.hpp"
#include "knowledge/entered_style.hpp"
#include "knowledge/recipe_in_text.hpp"
#include "page/mended_recipes.hpp"
#include "page/question.hpp"
#include "page/recipe_json.hpp"
#include "page/scores_in.hpp"
#include "page/shelf.hpp"
#include "reading/embedded.hpp"
#include "reading/pantry.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/remark_reader.hpp"
#include "reading/style_name.hpp"
#include "reading/yaml_document.hpp"
#include "report/check_json.hpp"
#include "report/check_page.hpp"
#include "report/explain_json.hpp"
#include "report/explain_page.hpp"
#include "report/fault_json.hpp"
#include "report/mend_json.hpp"
#include "report/mend_page.hpp"
#include "report/rank_json.hpp"
#include "report/rank_page.hpp"

namespace entrywise {

namespace {

constexpr const char* remarks_file = "styles/remarks.yaml";

/// What an ask is answered from.
struct Desk {
    const Knowledge& knowledge;
    const RemarkBook& remarks;
    const std::vector<Style>& styles;
};

using Answer = Outcome<Json>;

Json json_of(const std::vector<Remark>& remarks) {
    Json list = Json::array();
    for (const Remark& remark : remarks) {
        list.push_back({{"kind", name_of(remark.kind)}, {"text", remark.text}});
    }
    return list;
}

Outcome<Recipe> recipe_in(const Node& question, const Desk& desk) {
    const Node* recipe = value_of(question, "recipe");
    return recipe == nullptr ? missing_in_question("recipe")
                             : read_recipe(*recipe, desk.knowledge.library.ingredients(), recipe_of_the_page);
}

/// The style that the question names, or else the one that the recipe declares.
Outcome<EnteredStyle> style_for(const Node& question, const Recipe& recipe, const Desk& desk) {
    const auto named = style_name_from(text_in(question, "style"));
    Outcome<Style> style =
        named ? desk.knowledge.library.style(*named) : declared_style(recipe, desk.knowledge.library);
    return style ? entered_style(*std::move(style.value), recipe, desk.knowledge)
                 : Outcome<EnteredStyle>(style.faults);
}

Answer shelf(const Node& /*question*/, const Desk& desk) {
    return shelf_json(desk.knowledge, desk.styles);
}

Answer read(const Node& question, const Desk& desk) {
    const Outcome<RecipeInput> input = recipe_in_text(text_in(question, "text"), text_in(question, "file"),
                                                      desk.knowledge.library, text_in(question, "pick"));
    if (!input) {
        return input.faults;
    }
    return Json{{"recipe", page_json(input->document)}, {"remarks", json_of(input->remarks)}};
}

std::optional<StyleInWords> style_in_words(const Recipe& recipe, const Library& library) {
    const auto style = recipe.style ? library.style(*recipe.style).value : std::nullopt;
    return style ? std::optional(StyleInWords{style->name, style->category}) : std::nullopt;
}

Answer write(const Node& question, const Desk& desk) {
    const Outcome<Recipe> recipe = recipe_in(question, desk);
    if (!recipe) {
        return recipe.faults;
    }
    const Library& library = desk.knowledge.library;
    const WrittenExchange written =
        text_in(question, "to") == "beerjson"
            ? beerjson_text(*recipe, style_in_words(*recipe, library), library.ingredients())
            : WrittenExchange{recipe_file_text(*value_of(question, "recipe")), {}};
    return Json{{"text", written.text}, {"remarks", json_of(written.remarks)}};
}

Answer check_it(const Node& question, const Desk& desk) {
    const Outcome<Recipe> recipe = recipe_in(question, desk);
    if (!recipe) {
        return recipe.faults;
    }
    const Outcome<EnteredStyle> entered = style_for(question, *recipe, desk);
    if (!entered) {
        return entered.faults;
    }
    const Handbook& handbook = desk.knowledge.handbook;
    const Check checked = check(*recipe, entered->style, handbook, entered->base_style);
    return Json{{"document", check_json(checked, handbook.score_sheet)},
                {"article", check_article(checked, handbook.score_sheet, {}).body}};
}

Answer rank_it(const Node& question, const Desk& desk) {
    const Outcome<Recipe> recipe = recipe_in(question, desk);
    if (!recipe) {
        return recipe.faults;
    }
    const std::string guide = text_in(question, "guide");
    std::vector<Style> field;
    for (const Style& style : desk.styles) {
        if (style.guide == guide || guide.empty() || guide == "all") {
            field.push_back(style);
        }
    }
    const Handbook& handbook = desk.knowledge.handbook;
    const Ranking ranking = rank(*recipe, field, handbook, recipe->style);
    const Beer beer = taste(*recipe, handbook.perception).beer;
    return Json{{"document", rank_json(ranking, *recipe, handbook.score_sheet, {})},
                {"article", rank_article(ranking, *recipe, beer, field, handbook.score_sheet).body}};
}

/// The recipe is read anew from the text that its file would be: what is proposed is written into that.
Answer mend_it(const Node& question, const Desk& desk) {
    const Outcome<Recipe> asked = recipe_in(question, desk);
    if (!asked) {
        return asked.faults;
    }
    const KnownIngredients& ingredients = desk.knowledge.library.ingredients();
    const std::string text = recipe_file_text(*value_of(question, "recipe"));
    const Outcome<Node> document = yaml_document(text, recipe_of_the_page);
    const Outcome<Recipe> recipe =
        document ? read_recipe(*document, ingredients, recipe_of_the_page) : Outcome<Recipe>(document.faults);
    if (!recipe) {
        return recipe.faults;
    }
    const Outcome<EnteredStyle> entered = style_for(question, *recipe, desk);
    if (!entered) {
        return entered.faults;
    }
    const bool by_base = entered->style.varies && entered->base_style;
    const MendingMeans means{pantry_of(by_base ? *entered->base_style : entered->style, ingredients), {}};
    MendingWish wish;
    wish.stage = text_in(question, "stage") == "brewed" ? Stage::brewed : Stage::recipe;
    const Handbook& handbook = desk.knowledge.handbook;
    const Mending mending = mend(*recipe, entered->style, handbook, means, wish, entered->base_style);
    Json mended = Json::array();
    for (const std::optional<Node>& each : mended_recipes(mending, text)) {
        mended.push_back(each ? page_json(*each) : Json(nullptr));
    }
    return Json{{"document", mend_json(mending, handbook.score_sheet)},
                {"article", mend_article(mending, handbook.score_sheet).body},
                {"mended", std::move(mended)}};
}

Answer explain_it(const Node& question, const Desk& desk) {
    const Outcome<Recipe> recipe = recipe_in(question, desk);
    if (!recipe) {
        return recipe.faults;
    }
    const Handbook& handbook = desk.knowledge.handbook;
    const Outcome<SectionScores> scores = scores_in(value_of(question, "scores"), handbook.score_sheet);
    if (!scores) {
        return scores.faults;
    }
    const Outcome<EnteredStyle> entered = style_for(question, *recipe, desk);
    if (!entered) {
        return entered.faults;
    }
    const bool builds_on_a_base = entered->style.varies && entered->base_style;
    const Style style =
        builds_on_a_base ? judged_style(entered->style, *entered->base_style) : entered->style;
    const Explanation explanation =
        explain(*recipe, style, {texts_in(question, "notes"), *scores}, handbook, desk.remarks);
    return Json{{"document", explain_json(explanation)},
                {"article", explain_article(explanation, handbook).body}};
}

struct Ask {
    std::string_view name;
    Answer (*answer)(const Node& question, const Desk& desk);
};

constexpr std::array<Ask, 7> asks{{
    {"shelf", shelf},
    {"read", read},
    {"write", write},
    {"check", check_it},
    {"rank", rank_it},
    {"mend", mend_it},
    {"explain", explain_it},
}};

Answer answer_to(const Node& question, const Desk& desk) {
    const std::string name = text_in(question, "ask");
    for (const Ask& ask : asks) {
        if (ask.name == name) {
            return ask.answer(question, desk);
        }
    }
    return missing_in_question("ask");
}

Json faults_json(const std::vector<Fault>& faults, const Node* recipe) {
    Json document = fault_json(faults);
    for (std::size_t index = 0; index < faults.size(); ++index) {
        const bool of_recipe = recipe != nullptr && faults[index].place.file == recipe_of_the_page;
        const std::string way = of_recipe ? way_to(faults[index].place.position, *recipe) : std::string();
        document["faults"][index]["at"] = way.empty() ? Json(nullptr) : Json(way);
    }
    return document;
}

std::string text_of(const Json& document) {
    return document.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace

Outcome<Door> Door::open() {
    Outcome<Knowledge> knowledge = knowledge_in(Library(embedded_documents()));
    if (!knowledge) {
        return knowledge.faults;
    }
    const Outcome<Node> document = knowledge->library.document(remarks_file);
    Outcome<RemarkBook> remarks =
        document ? read_remarks(*document, remarks_file) : Outcome<RemarkBook>(document.faults);
    if (!remarks) {
        return remarks.faults;
    }
    Outcome<std::vector<Style>> styles = all_styles(knowledge->library);
    if (!styles) {
        return styles.faults;
    }
    return Door(*std::move(knowledge.value), *std::move(remarks.value), *std::move(styles.value));
}

Door::Door(Knowledge knowledge, RemarkBook remarks, std::vector<Style> styles)
    : knowledge_(std::move(knowledge)), remarks_(std::move(remarks)), styles_(std::move(styles)) {}

std::string Door::answer(std::string_view question) const {
    const Outcome<Node> asked = json_document(question, "the question");
    if (!asked) {
        return text_of(faults_json(asked.faults, nullptr));
    }
    Answer answer = answer_to(*asked, {knowledge_, remarks_, styles_});
    if (!answer) {
        return text_of(faults_json(answer.faults, value_of(*asked, "recipe")));
    }
    Json document{{"format", "entrywise/page/1"}};
    document.update(*answer);
    return text_of(document);
}

}  // namespace entrywise

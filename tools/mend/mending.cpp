#include <fmt/format.h>

#include <algorithm>
#include <ctime>
#include <filesystem>
#include <string>
#include <vector>

#include "advice/mend.hpp"
#include "reading/pantry.hpp"
#include "reading/perception_reader.hpp"
#include "reading/phrase_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "tests/support/off_style.hpp"

namespace entrywise {

namespace {

/// What mending a list of recipes came to.
class Measurement {
  public:
    Measurement(const Library& library, const Handbook& handbook) : library_(library), handbook_(handbook) {}

    void take(const std::string& name, const Recipe& recipe, const Style& style) {
        const MendingMeans means{pantry_of(style, library_.ingredients()), {}};
        const std::clock_t start = std::clock();
        const Mending mending = mend(recipe, style, handbook_, means, {});
        const double taken = 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        milliseconds_.push_back(taken);
        fmt::print("{:<48} {:<7} {:>5.1f} ->", name.substr(0, 48), style.code.substr(0, 7),
                   mending.sheet.total.median);
        ++count_;
        if (mending.is_in_already()) {
            fmt::print(" in already\n");
            ++passed_;
            ++few_changes_;
            ++reached_;
            return;
        }
        record(mending);
        fmt::print("  {:.0f} ms\n", taken);
        for (const Proposal& proposal : mending.proposals) {
            std::string line;
            for (const Change& change : proposal.changes) {
                line += fmt::format("; {} {} -> {} {}", change.what, shown(change.from), shown(change.to),
                                    change.unit);
            }
            fmt::print("        {:.1f}: {}\n", proposal.sheet.total.median, line.substr(2));
        }
    }

    void print(const std::string& title) {
        std::sort(milliseconds_.begin(), milliseconds_.end());
        fmt::print(
            "{}: {} recipes\n  with a proposal that holds: {:.1f} %\n  with the wanted target reached: "
            "{:.1f} %\n  with at most three changes: {:.1f} %\n  time: median {:.0f} ms, worst {:.0f} ms\n",
            title, count_, percent_of(passed_), percent_of(reached_), percent_of(few_changes_),
            milliseconds_[milliseconds_.size() / 2], milliseconds_.back());
    }

  private:
    double percent_of(int part) const { return 100.0 * part / count_; }

    static std::string shown(const Change::Value& value) {
        if (const double* number = std::get_if<double>(&value)) {
            return fmt::format("{:g}", *number);
        }
        return std::get<std::string>(value);
    }

    void record(const Mending& mending) {
        if (mending.proposals.empty()) {
            fmt::print(" nothing that holds");
            return;
        }
        const auto& first = mending.proposals.front();
        const bool holds =
            std::all_of(mending.proposals.begin(), mending.proposals.end(), [&](const Proposal& proposal) {
                Recipe mended = proposal.attempt.recipe;
                const double again = verdict_on(taste(mended, handbook_.perception), mending.style, handbook_)
                                         .sheet.total.median;
                return again < mending.target + 0.05;
            });
        passed_ += holds ? 1 : 0;
        reached_ += mending.target == mending.wanted ? 1 : 0;
        few_changes_ += first.changes.size() <= 3 ? 1 : 0;
        for (const Proposal& proposal : mending.proposals) {
            fmt::print(" {:.1f} by {}", proposal.sheet.total.median, proposal.changes.size());
        }
        if (mending.target != mending.wanted) {
            fmt::print(" (half)");
        }
    }

    const Library& library_;
    const Handbook& handbook_;
    std::vector<double> milliseconds_;
    int count_ = 0;
    int passed_ = 0;
    int reached_ = 0;
    int few_changes_ = 0;
};

std::vector<std::string> demo_beers() {
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(ENTRYWISE_SOURCE_DIR "/recipes")) {
        if (entry.path().extension() == ".yaml") {
            files.push_back(entry.path().string());
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

}  // namespace

}  // namespace entrywise

int main() {
    using namespace entrywise;
    const Library library(embedded_documents());
    const Handbook handbook{
        *read_score_sheet(*library.document("styles/sheet.yaml"), "styles/sheet.yaml"),
        *read_perception(*library.document("styles/perception.yaml"), "styles/perception.yaml"),
        *read_phrases(*library.document("styles/phrases.yaml"), "styles/phrases.yaml")};
    Measurement demo(library, handbook);
    for (const std::string& file : demo_beers()) {
        const auto recipe = read_recipe(file, library.ingredients());
        StyleName style = *recipe->style;
        if (style.code == "25B") {
            style.code = "25B-standard-pale";
        }
        demo.take(recipe->name, *recipe, *library.style(style));
    }
    Measurement synthetic(library, handbook);
    for (const testing::OffStyle& off : testing::off_style_recipes(library, handbook)) {
        synthetic.take(off.recipe.name + ", " + off.push, off.recipe, off.style);
    }
    demo.print("demo beers");
    synthetic.print("pushed out of style");
    return 0;
}

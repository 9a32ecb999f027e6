#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <map>
#include <memory>
#include <numeric>
#include <thread>
#include <utility>
#include <vector>

#include "base/number.hpp"
#include "cli/commands.hpp"
#include "cli/competition_named.hpp"
#include "cli/each_input.hpp"
#include "cli/entry_recipe.hpp"
#include "cli/entry_source.hpp"
#include "cli/knowledge.hpp"
#include "cli/progress.hpp"
#include "cli/streams.hpp"
#include "cli/unfinished_run.hpp"
#include "judging/palate_step.hpp"
#include "reading/competition_reader.hpp"
#include "reading/style_name.hpp"
#include "report/fault_text.hpp"
#include "report/screen_csv.hpp"
#include "report/screen_json.hpp"
#include "report/screen_page.hpp"
#include "report/screen_text.hpp"
#include "screening/flight.hpp"
#include "screening/ordered_work.hpp"
#include "screening/screen.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

/// What the entries are held against, the same for all of them.
struct Evening {
    std::shared_ptr<const Knowledge> knowledge;
    std::string guide;                                 ///< of codes that name none; none for the usual
    std::map<std::string, std::vector<Style>> styles;  ///< of each guide
    std::map<std::string, LineUp> line_ups;            ///< of these
    std::vector<StyleName> categories;                 ///< that are asked for; none for all
    std::optional<Competition> competition;            ///< whose entries they are
};

/// Reads the styles in which entries may stand: those that the competition accepts, or else those of each
/// guide.
std::vector<Fault> read_styles(Evening& evening, const Library& library) {
    const bool one_guide = evening.competition || !evening.guide.empty();
    const std::vector<std::string> guides =
        one_guide ? std::vector<std::string>{evening.guide} : library.guides();
    for (const std::string& guide : guides) {
        Outcome<std::vector<Style>> styles =
            evening.competition ? styles_accepted(*evening.competition, library) : styles_of(library, guide);
        if (!styles) {
            return styles.faults;
        }
        evening.styles[guide] = *std::move(styles.value);
    }
    return {};
}

Outcome<Evening> evening_for(const Call& call) {
    Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return knowledge.faults;
    }
    Evening evening;
    const auto known = std::make_shared<Knowledge>(*std::move(knowledge.value));
    evening.knowledge = known;
    Library& library = known->library;
    if (!call.competition.empty()) {
        Outcome<Competition> competition = competition_named(call.competition, library);
        if (!competition) {
            return competition.faults;
        }
        evening.competition = std::move(competition.value);
    }
    evening.guide = evening.competition ? evening.competition->guide : call.guide;
    if (std::vector<Fault> faults = read_styles(evening, library); !faults.empty()) {
        return faults;
    }
    for (const auto& [guide, styles] : evening.styles) {
        evening.line_ups.try_emplace(guide, styles, known->handbook);
        // A competition's own styles ask for more than those of the guide that they go by.
        if (!evening.competition) {
            library.keep(styles);
        }
    }
    for (const std::string& code : call.categories) {
        const bool names_its_guide = evening.guide.empty() || code.find('/') != std::string::npos;
        const Outcome<Style> style =
            style_called(library, names_its_guide ? code : evening.guide + '/' + code);
        if (!style) {
            return style.faults;
        }
        evening.categories.push_back({style->guide, style->code});
    }
    return evening;
}

/// The styles among which the best place is looked for: those that the competition accepts or of the guide
/// that was asked for, or else of the guide that the entry declares.
const LineUp& places_for(const EntryRead& read, const Evening& evening) {
    const std::string declared = read.style ? read.style->guide : std::string(default_guide);
    const auto found = evening.line_ups.find(evening.guide.empty() ? declared : evening.guide);
    return found == evening.line_ups.end() ? evening.line_ups.begin()->second : found->second;
}

/// An entry that is dealt with.
struct Done {
    Screened screened;
    std::string object;  ///< as a line of JSON, where the format asks for it
    std::uint64_t input_up_to_here = 0;
    std::optional<double> share;
};

Screening screened_by(ClubEntry entry, const Evening& evening, const Call& call, Deviates& dice) {
    Outcome<EntryRead> read = entry_read(entry, evening.guide, *evening.knowledge);
    entry.recipe.reset();
    if (call.blind) {
        const std::string told_as = "entry " + entry.number;
        make_blind(read.faults, entry.brewer, told_as);
        make_blind(entry);
        entry.recipe_file = told_as;
        if (read) {
            read.value->recipe.name.clear();
            read.value->recipe.file = told_as;
        }
    }
    if (!read) {
        return {unreadable(std::move(entry), std::move(read.faults)), {}};
    }
    if (evening.competition && read->style) {
        read.value->seat = seat_of(*evening.competition, *read->style);
    }
    return screen(std::move(entry), *read, places_for(*read, evening), dice);
}

Done dealt_with(NumberedEntry numbered, const Evening& evening, const Call& call, Deviates& dice) {
    Screening screening = screened_by(std::move(numbered.entry), evening, call, dice);
    const bool wants_objects = call.format == Format::json || call.format == Format::jsonl;
    std::string object = wants_objects
                             ? json_line(screening_json(screening, evening.knowledge->handbook.score_sheet))
                             : std::string();
    return {std::move(screening.screened), std::move(object), numbered.input_up_to_here, numbered.share};
}

bool is_of(const std::vector<StyleName>& categories, const Screened& screened) {
    return categories.empty() ||
           std::any_of(categories.begin(), categories.end(), [&](const StyleName& category) {
               return screened.style && screened.style->guide == category.guide &&
                      (screened.style->code == category.code ||
                       entered_code(screened.style->code) == category.code);
           });
}

bool stands_as_asked(const Screened& screened, const Call& call) {
    const std::vector<std::string>& asked = call.statuses;
    return asked.empty() || std::find(asked.begin(), asked.end(), word_of(screened.status)) != asked.end();
}

/// Decided on the points as they are printed.
ExitStatus status_for(const Screened& screened, const Call& call) {
    constexpr int printed_decimals = 1;
    if (screened.status == Status::unreadable) {
        return ExitStatus::wrong_input;
    }
    const bool fails = call.fail_at && screened.at_risk &&
                       rounded(screened.at_risk->median, printed_decimals) >= *call.fail_at;
    return fails ? ExitStatus::findings : ExitStatus::done;
}

/// How many there were and could not be read, for the last word.
struct Tally {
    std::size_t entries = 0;
    std::size_t unreadable = 0;

    void add(const Screened& screened) {
        ++entries;
        unreadable += screened.status == Status::unreadable ? 1U : 0U;
    }
};

void tell_of(const Tally& tally) {
    if (tally.unreadable > 0) {
        tell(fmt::format("{} of {} entries could not be read.\n", tally.unreadable, tally.entries));
    }
}

void work_on(EntrySource& source, const Evening& evening, const Call& call,
             const std::function<bool(Done)>& take) {
    const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
    const std::size_t threads = call.threads.value_or(cores);
    std::vector<Deviates> dice(threads, Deviates(usual_draws));
    Progress progress;
    OrderedWork<NumberedEntry, Done> work([&] { return source.next(); },
                                          [&](NumberedEntry entry, std::size_t thread) {
                                              return dealt_with(std::move(entry), evening, call,
                                                                dice[thread]);
                                          },
                                          [&](Done done) {
                                              progress.step(done.share);
                                              return take(std::move(done));
                                          });
    work.run(threads);
}

double strength_of(const Screened& screened) {
    return screened.figures ? palate_steps(screened.figures->alcohol.median) +
                                  palate_steps(screened.figures->bitterness.median)
                            : 0.0;
}

double risk_of(const Screened& screened) {
    return screened.at_risk ? screened.at_risk->median : -1.0;
}

double gain_of(const Screened& screened) {
    return screened.best ? screened.best->gain : -1.0;
}

bool comes_before(const Screened& first, const Screened& second, ScreenOrder order) {
    switch (order) {
        case ScreenOrder::entry:
            return false;
        case ScreenOrder::risk:
            return risk_of(first) > risk_of(second);
        case ScreenOrder::gain:
            return gain_of(first) > gain_of(second);
        case ScreenOrder::category:
            return first.style && (!second.style || stands_before(*first.style, *second.style));
        case ScreenOrder::status:
            return first.status > second.status;
        case ScreenOrder::strength:
            return strength_of(first) < strength_of(second);
    }
    return false;
}

/// The places of the entries to tell of, in the order that the call asks for.
std::vector<std::size_t> places_to_tell(const std::vector<Screened>& entries, const Call& call) {
    std::vector<std::size_t> places;
    for (std::size_t place = 0; place < entries.size(); ++place) {
        if (stands_as_asked(entries[place], call)) {
            places.push_back(place);
        }
    }
    std::stable_sort(places.begin(), places.end(), [&](std::size_t left, std::size_t right) {
        return comes_before(entries[left], entries[right], call.order);
    });
    return places;
}

/// Where the entries came from; a folder or a table may be named after a brewer.
std::string source_told(const Call& call) {
    const std::string& word = call.words.front();
    return call.blind ? std::string() : word == "-" ? "standard input" : word;
}

std::string whole_result(const std::vector<Screened>& entries, const std::vector<std::string>& objects,
                         const Call& call) {
    const std::vector<std::size_t> places = places_to_tell(entries, call);
    if (call.format == Format::csv) {
        return screen_csv(entries, places);
    }
    const std::vector<Flight> flights = flights_of(entries);
    switch (call.format) {
        case Format::json:
            return screen_json_text(objects, entries, places, flights);
        case Format::html:
            return screen_page(entries, places, flights, source_told(call));
        default:
            return screen_text(entries, places, flights, text_style_for(call));
    }
}

ExitStatus failed(const Fault& fault) {
    tell(fault_text({fault}));
    return ExitStatus::wrong_input;
}

/// Everything is known before anything is told.
ExitStatus tell_at_the_end(EntrySource& source, const Evening& evening, const Call& call) {
    Outcome<ResultSink> sink = ResultSink::open(call);
    if (!sink) {
        return report_faults(call, sink.faults);
    }
    std::vector<Screened> entries;
    std::vector<std::string> objects;
    Tally tally;
    ExitStatus status = ExitStatus::done;
    work_on(source, evening, call, [&](Done done) {
        tally.add(done.screened);
        status = worse(status, status_for(done.screened, call));
        if (is_of(evening.categories, done.screened)) {
            entries.push_back(std::move(done.screened));
            objects.push_back(std::move(done.object));
        }
        return true;
    });
    if (const auto fault = source.fault()) {
        return failed(*fault);
    }
    mark_duplicates(entries);
    auto fault = sink.value->write(whole_result(entries, objects, call));
    fault = fault ? fault : sink.value->finish();
    if (fault) {
        return failed(*fault);
    }
    tell_of(tally);
    return status;
}

/// A run that tells each entry as soon as it is dealt with, and holds no more of it.
class Stream {
  public:
    Stream(EntrySource& source, const Evening& evening, const Call& call)
        : source_(source), evening_(evening), call_(call), can_be_continued_(output_is_a_file(call)) {}

    ExitStatus run() {
        if (const auto fault = begin()) {
            return failed(*fault);
        }
        work_on(source_, evening_, call_, [this](const Done& done) { return take(done); });
        if (!fault_) {
            fault_ = source_.fault();
        }
        if (!fault_) {
            fault_ = sink_->finish();
        }
        if (fault_) {
            return failed(*fault_);
        }
        if (can_be_continued_) {
            forget_unfinished_run(call_);
        }
        tell_of(tally_);
        return run_.status;
    }

  private:
    std::optional<Fault> begin() {
        if (call_.resume) {
            Outcome<std::optional<UnfinishedRun>> earlier = unfinished_run(call_);
            if (!earlier) {
                return earlier.faults.front();
            }
            run_ = (*earlier.value).value_or(UnfinishedRun{});
            if (const auto fault = pass_over_what_is_done()) {
                return fault;
            }
        }
        Outcome<ResultSink> sink =
            ResultSink::open(call_, can_be_continued_ ? std::optional(run_.bytes) : std::nullopt);
        if (!sink) {
            return sink.faults.front();
        }
        sink_.emplace(*std::move(sink.value));
        if (can_be_continued_ && !call_.resume) {
            forget_unfinished_run(call_);
        }
        return std::nullopt;
    }

    std::optional<Fault> pass_over_what_is_done() {
        std::uint64_t input = 0;
        for (std::uint64_t count = 0; count < run_.entries; ++count) {
            const auto entry = source_.next();
            input = entry ? entry->input_up_to_here : 0;
        }
        if (input == run_.input) {
            return std::nullopt;
        }
        return Fault{.place = {call_.words.front() == "-" ? "standard input" : call_.words.front(), {}},
                     .found = "other entries than those of the interrupted run",
                     .expected = fmt::format("the same first {}", run_.entries),
                     .nearest = {},
                     .remedy = "Nothing was written. Without --resume the run starts from the beginning."};
    }

    bool take(const Done& done) {
        tally_.add(done.screened);
        ++run_.entries;
        run_.input = done.input_up_to_here;
        run_.status = worse(run_.status, status_for(done.screened, call_));
        if (is_of(evening_.categories, done.screened) && stands_as_asked(done.screened, call_)) {
            fault_ = sink_->write(done.object);
        }
        if (!fault_ && can_be_continued_) {
            fault_ = write_down_now_and_then();
        }
        return !fault_ && !sink_->reader_is_gone();
    }

    std::optional<Fault> write_down_now_and_then() {
        using Clock = std::chrono::steady_clock;
        constexpr std::chrono::milliseconds between(500);
        if (Clock::now() - written_down_ < between) {
            return std::nullopt;
        }
        written_down_ = Clock::now();
        const Outcome<std::uint64_t> bytes = sink_->secure();
        if (!bytes) {
            return bytes.faults.front();
        }
        run_.bytes = *bytes;
        return write_down(run_, call_);
    }

    EntrySource& source_;
    const Evening& evening_;
    const Call& call_;
    bool can_be_continued_;
    std::optional<ResultSink> sink_;
    UnfinishedRun run_;
    Tally tally_;
    std::optional<Fault> fault_;
    std::chrono::steady_clock::time_point written_down_ = std::chrono::steady_clock::now();
};

}  // namespace

ExitStatus screen_command(const Call& call) {
    const Outcome<Evening> evening = evening_for(call);
    if (!evening) {
        return report_faults(call, evening.faults);
    }
    const Outcome<std::unique_ptr<EntrySource>> source = open_entries(call);
    if (!source) {
        return report_faults(call, source.faults);
    }
    EntrySource& entries = **source;
    return call.format == Format::jsonl ? Stream(entries, *evening, call).run()
                                        : tell_at_the_end(entries, *evening, call);
}

}  // namespace entrywise

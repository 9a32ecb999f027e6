#include "cli/each_input.hpp"

#include <vector>

#include "cli/streams.hpp"
#include "report/fault_json.hpp"
#include "report/fault_text.hpp"

namespace entrywise {

namespace {

/// Reports as they come in, in every form.
class Collection {
  public:
    void add(const Report& report) {
        text_ += (text_.empty() ? "" : "\n") + report.text;
        documents_.push_back(report.document);
        articles_.push_back(report.article);
        status_ = worse(status_, report.status);
    }

    void add(const std::vector<Fault>& faults) {
        faults_.insert(faults_.end(), faults.begin(), faults.end());
        documents_.push_back(fault_json(faults));
        status_ = worse(status_, ExitStatus::wrong_input);
    }

    std::string result(Format format) const {
        if (format == Format::text) {
            return text_;
        }
        if (format == Format::html) {
            return articles_.empty() ? std::string() : page_of(articles_);
        }
        return json_text(documents_.size() == 1 ? documents_.front() : documents_);
    }

    const std::vector<Fault>& faults() const { return faults_; }
    ExitStatus status() const { return status_; }

  private:
    std::string text_;
    Json documents_ = Json::array();
    std::vector<Article> articles_;
    std::vector<Fault> faults_;
    ExitStatus status_ = ExitStatus::done;
};

}  // namespace

ExitStatus report_on_each(const Call& call, const std::function<Outcome<Report>(const std::string&)>& make) {
    Collection collection;
    for (const std::string& word : call.words) {
        const Outcome<Report> report = make(word);
        if (report) {
            collection.add(*report);
        } else {
            collection.add(report.faults);
        }
    }
    const std::string result = collection.result(call.format);
    const ExitStatus delivered = result.empty() ? ExitStatus::done : deliver_or_tell(call, result);
    tell(fault_text(collection.faults()));
    return worse(delivered, collection.status());
}

ExitStatus report_faults(const Call& call, const std::vector<Fault>& faults) {
    if (call.format == Format::json) {
        static_cast<void>(deliver_or_tell(call, json_text(fault_json(faults))));
    }
    tell(fault_text(faults));
    return ExitStatus::wrong_input;
}

ExitStatus deliver_or_tell(const Call& call, const std::string& result) {
    if (const auto fault = deliver(call, result)) {
        tell(fault_text({*fault}));
        return ExitStatus::wrong_input;
    }
    return ExitStatus::done;
}

}  // namespace entrywise

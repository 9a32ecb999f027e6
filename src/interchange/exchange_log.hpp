#pragma once

#include <string>
#include <utility>
#include <vector>

#include "interchange/remark.hpp"
#include "reading/fault_log.hpp"

namespace entrywise {

/// What reading a file of another format brings up: what is wrong with it, and what there is to know of how
/// it was read.
class ExchangeLog {
  public:
    explicit ExchangeLog(std::string file) : faults_(std::move(file)) {}

    FaultLog& faults() { return faults_; }
    const std::string& file() const { return faults_.file(); }

    /// Told once, however often it comes up with the same words.
    void remark(Position position, RemarkKind kind, std::string text);

    /// A key of the format that no recipe holds; all of them make up one remark.
    void leave_out_key(const std::string& path);

    /// All remarks in the order of the file, the one on keys last.
    std::vector<Remark> remarks() const;

  private:
    FaultLog faults_;
    std::vector<Remark> remarks_;
    std::vector<std::string> left_out_keys_;
};

}  // namespace entrywise

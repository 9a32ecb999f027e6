#pragma once

#include <condition_variable>
#include <cstddef>
#include <exception>
#include <functional>
#include <mutex>
#include <optional>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace entrywise {

/// Works on inputs that know nothing of one another, on several threads, and hands the results on in the
/// order of the inputs. `next` gives an input, or nothing at the end; `work` makes a result of it; `take`
/// takes one and says whether to go on. `next` is never called by two threads at once, nor is `take`; `work`
/// is, with the number of its thread. So many results at most wait for a slow one as there are places in the
/// window, so that memory does not grow with the inputs. The calling thread is one of the threads. What one
/// of the three throws ends the work and is thrown on.
template <class Input, class Result>
class OrderedWork {
  public:
    using Next = std::function<std::optional<Input>()>;
    using Work = std::function<Result(Input, std::size_t)>;
    using Take = std::function<bool(Result)>;

    OrderedWork(Next next, Work work, Take take)
        : next_(std::move(next)), work_(std::move(work)), take_(std::move(take)) {}

    void run(std::size_t threads) {
        constexpr std::size_t results_a_thread = 8;  // working value
        waiting_.resize(threads * results_a_thread);
        std::vector<std::thread> others = start_others(threads);
        work_along(0);
        for (std::thread& other : others) {
            other.join();
        }
        if (thrown_) {
            std::rethrow_exception(thrown_);
        }
    }

  private:
    /// As many threads as the system gives; the calling one does the work of those that it does not.
    std::vector<std::thread> start_others(std::size_t threads) {
        std::vector<std::thread> others;
        others.reserve(threads);
        try {
            for (std::size_t count = 1; count < threads; ++count) {
                others.emplace_back([this, count] { work_along(count); });
            }
        } catch (const std::system_error&) {
            // Those that there are do the work.
        }
        return others;
    }

    void work_along(std::size_t thread) {
        try {
            while (auto numbered = next_input()) {
                Result result = work_(std::move(numbered->second), thread);
                hand_on(numbered->first, std::move(result));
            }
        } catch (...) {
            const std::lock_guard lock(results_);
            if (!thrown_) {
                thrown_ = std::current_exception();
            }
            stopped_ = true;
            room_.notify_all();
        }
    }

    std::optional<std::pair<std::size_t, Input>> next_input() {
        const std::lock_guard reading(inputs_);
        {
            std::unique_lock lock(results_);
            room_.wait(lock, [this] { return stopped_ || read_ < taken_ + waiting_.size(); });
            if (stopped_) {
                return std::nullopt;
            }
        }
        std::optional<Input> input = ended_ ? std::nullopt : next_();
        ended_ = !input;
        return input ? std::optional(std::pair(read_++, *std::move(input))) : std::nullopt;
    }

    void hand_on(std::size_t number, Result result) {
        const std::lock_guard lock(results_);
        waiting_[number % waiting_.size()] = std::move(result);
        while (!stopped_ && waiting_[taken_ % waiting_.size()]) {
            Result first = *std::exchange(waiting_[taken_ % waiting_.size()], std::nullopt);
            stopped_ = !take_(std::move(first));
            ++taken_;
        }
        room_.notify_all();
    }

    Next next_;
    Work work_;
    Take take_;
    std::mutex inputs_;  // guards next_ and what was read
    std::size_t read_ = 0;
    bool ended_ = false;
    std::mutex results_;  // guards take_ and all below; taken after the other where both are
    std::condition_variable room_;
    std::size_t taken_ = 0;
    std::vector<std::optional<Result>> waiting_;
    bool stopped_ = false;
    std::exception_ptr thrown_;
};

}  // namespace entrywise

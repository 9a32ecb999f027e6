// Runs commands as whole processes, in turn, so that what else the machine does meets all of them alike.
// Usage: benchmark_measure RUNS NAME COMMAND [ARGUMENT...] [-- NAME COMMAND [ARGUMENT...]]...
// Prints wall time, processor time and peak memory of each, and the ratio of its median wall time to that of
// the last.

#include <fcntl.h>
#include <fmt/core.h>
#include <sys/resource.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace {

struct Command {
    std::string name;
    std::vector<char*> words;  ///< ends with a null, as exec wants it
    std::vector<double> milliseconds;
    std::vector<double> processor_milliseconds;  ///< of all its threads and the processes that it waits for
    long peak_kilobytes = 0;
};

double milliseconds_of(const timeval& time) {
    return 1e3 * static_cast<double>(time.tv_sec) + 1e-3 * static_cast<double>(time.tv_usec);
}

/// One run with its output thrown away; false if the program failed or could not be started.
bool run(Command& command) {
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        const int nowhere = ::open("/dev/null", O_RDWR);
        ::dup2(nowhere, STDIN_FILENO);
        ::dup2(nowhere, STDOUT_FILENO);
        ::execv(command.words.front(), command.words.data());
        std::_Exit(127);
    }
    int status = 0;
    rusage used{};
    if (child < 0 || ::wait4(child, &status, 0, &used) != child) {
        return false;
    }
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
    command.milliseconds.push_back(taken.count());
    command.processor_milliseconds.push_back(milliseconds_of(used.ru_utime) + milliseconds_of(used.ru_stime));
    command.peak_kilobytes = std::max(command.peak_kilobytes, used.ru_maxrss);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

double quantile(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

std::vector<Command> commands_in(const std::vector<char*>& arguments) {
    std::vector<Command> commands;
    bool expects_name = true;
    for (char* argument : arguments) {
        if (std::string_view(argument) == "--") {
            expects_name = true;
        } else if (expects_name) {
            commands.push_back(
                {.name = argument, .words = {}, .milliseconds = {}, .processor_milliseconds = {}});
            expects_name = false;
        } else {
            commands.back().words.push_back(argument);
        }
    }
    for (Command& command : commands) {
        command.words.push_back(nullptr);
    }
    return commands;
}

std::optional<int> runs_in(std::string_view text) {
    int runs = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), runs);
    const bool whole = error == std::errc() && end == text.data() + text.size();
    return whole && runs > 0 ? std::optional(runs) : std::nullopt;
}

void print_table(const std::vector<Command>& commands) {
    fmt::print("{:<28}{:>12}{:>12}{:>14}{:>12}{:>8}\n", "whole process", "median ms", "90 % ms",
               "processor ms", "peak MB", "ratio");
    const double yardstick = quantile(commands.back().milliseconds, 0.5);
    for (const Command& command : commands) {
        const double median = quantile(command.milliseconds, 0.5);
        fmt::print("{:<28}{:>12.2f}{:>12.2f}{:>14.2f}{:>12.1f}{:>8.1f}\n", command.name, median,
                   quantile(command.milliseconds, 0.9), quantile(command.processor_milliseconds, 0.5),
                   static_cast<double>(command.peak_kilobytes) / 1024.0, median / yardstick);
    }
}

}  // namespace

int main(int count, char** arguments) {
    const std::optional<int> runs = count > 3 ? runs_in(arguments[1]) : std::nullopt;
    if (!runs) {
        fmt::print(stderr, "usage: benchmark_measure RUNS NAME COMMAND [ARGUMENT...] [-- NAME COMMAND...]\n");
        return 2;
    }
    std::vector<Command> commands = commands_in({arguments + 2, arguments + count});
    for (int round = 0; round < *runs; ++round) {
        for (Command& command : commands) {
            if (!run(command)) {
                fmt::print(stderr, "{} failed\n", command.name);
                return 1;
            }
        }
    }
    print_table(commands);
    return 0;
}

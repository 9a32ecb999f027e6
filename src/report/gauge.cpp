#include "report/gauge.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

namespace entrywise {

namespace {

struct Glyphs {
    std::string_view blank = " ";
    std::string_view low_end;
    std::string_view high_end;
    std::string_view covered_end;
    std::string_view range;
    std::string_view interval;
    std::string_view median;
    std::string_view beyond_low;
    std::string_view beyond_high;
    std::string_view rest;
};

constexpr Glyphs drawn{" ", "├", "┤", "┿", "─", "━", "●", "‹", "›", "·"};
constexpr Glyphs typed{" ", "[", "]", "+", "-", "=", "O", "<", ">", "."};

const Glyphs& glyphs_of(const TextStyle& style) {
    return style.ascii ? typed : drawn;
}

/// The span of values that the drawing covers.
struct Window {
    double low;
    double high;
};

/// The range takes the middle half, so that the same place always means the same: inside, below, above.
Window window_of(const Interval80<double>& estimate, std::optional<double> low, std::optional<double> high) {
    if (low && high && *high > *low) {
        const double quarter = (*high - *low) / 2.0;
        return {*low - quarter, *high + quarter};
    }
    const double border = low ? *low : high.value_or(estimate.median);
    const double farthest = std::max(std::abs(estimate.low - border), std::abs(estimate.high - border));
    const double reach = farthest > 0.0 ? farthest * 1.25 : 1.0;
    return {border - reach, border + reach};
}

class Canvas {
  public:
    Canvas(Window window, std::size_t columns, const Glyphs& glyphs)
        : window_(window), cells_(columns, glyphs.blank), glyphs_(glyphs) {}

    bool shows(double value) const { return value >= window_.low && value <= window_.high; }

    std::size_t column_of(double value) const {
        const double share = std::clamp((value - window_.low) / (window_.high - window_.low), 0.0, 1.0);
        return static_cast<std::size_t>(std::lround(share * static_cast<double>(cells_.size() - 1)));
    }

    void line(double from, double to, std::string_view glyph) {
        const auto begin = cells_.begin() + static_cast<std::ptrdiff_t>(column_of(from));
        const auto end = cells_.begin() + static_cast<std::ptrdiff_t>(column_of(to)) + 1;
        std::fill(begin, end, glyph);
    }

    void range(std::optional<double> low, std::optional<double> high) {
        line(low.value_or(window_.low), high.value_or(window_.high), glyphs_.range);
    }

    /// The ends of the range, which an interval that covers them does not hide.
    void ends(std::optional<double> low, std::optional<double> high) {
        if (low) {
            end(column_of(*low), glyphs_.low_end);
        }
        if (high) {
            end(column_of(*high), glyphs_.high_end);
        }
    }

    void interval(const Interval80<double>& estimate) {
        if (estimate.high >= window_.low && estimate.low <= window_.high) {
            line(estimate.low, estimate.high, glyphs_.interval);
        }
    }

    void median(double value) {
        if (shows(value)) {
            cells_[column_of(value)] = glyphs_.median;
        } else if (value < window_.low) {
            cells_.front() = glyphs_.beyond_low;
        } else {
            cells_.back() = glyphs_.beyond_high;
        }
    }

    std::string text() const {
        std::string result;
        for (const std::string_view cell : cells_) {
            result += cell;
        }
        return result;
    }

  private:
    void end(std::size_t column, std::string_view glyph) {
        cells_[column] = cells_[column] == glyphs_.range ? glyph : glyphs_.covered_end;
    }

    Window window_;
    std::vector<std::string_view> cells_;
    const Glyphs& glyphs_;
};

}  // namespace

std::string gauge(const Interval80<double>& estimate, std::optional<double> low, std::optional<double> high,
                  std::size_t columns, const TextStyle& style) {
    Canvas canvas(window_of(estimate, low, high), columns, glyphs_of(style));
    canvas.range(low, high);
    canvas.interval(estimate);
    canvas.ends(low, high);
    canvas.median(estimate.median);
    return canvas.text();
}

std::string bar(double part, double whole, std::size_t columns, const TextStyle& style) {
    const double share = whole > 0.0 ? std::clamp(part / whole, 0.0, 1.0) : 0.0;
    auto filled = static_cast<std::size_t>(std::lround(share * static_cast<double>(columns)));
    if (part > 0.0 && filled == 0) {
        filled = 1;
    }
    std::string result;
    for (std::size_t column = 0; column < columns; ++column) {
        result += column < filled ? glyphs_of(style).interval : glyphs_of(style).rest;
    }
    return result;
}

}  // namespace entrywise

// SPDX-License-Identifier: MIT
#include <algorithm>
#include <functional>
#include <numeric>

#include <fmt/format.h>

#include "tests/bench/fill/measured.h"

namespace tussock::bench {

namespace {

using Values = std::vector<double>;

template <class Keep, class F>
Values valuesOf(const Way& way, Keep&& keep, F&& f) {
  Values values;
  for (const Measured& one : way.beds)
    if (one.bed.plants > 0 && keep(one)) values.push_back(f(one));
  return values;
}

double sumOf(const Values& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}
double meanOf(const Values& values) {
  return values.empty() ? 0.0 : sumOf(values) / static_cast<double>(values.size());
}
double quantile(Values values, double share) {
  if (values.empty()) return 0.0;
  std::sort(values.begin(), values.end());
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
}
std::string range(const Values& values) {
  return fmt::format("{:.2f} ({:.2f} to {:.2f})", quantile(values, 0.5), quantile(values, 0.0),
                     quantile(values, 1.0));
}

const auto kAll = [](const Measured&) { return true; };
const auto kLarge = [](const Measured& m) { return m.large(); };
const auto kLargeWide = [](const Measured& m) { return m.large() && !m.narrow(); };
const auto kLargeNarrow = [](const Measured& m) { return m.large() && m.narrow(); };

template <class Keep>
Values elongations(const Way& way, Keep&& keep) {
  Values all;
  for (const Measured& one : way.beds)
    if (keep(one)) all.insert(all.end(), one.bed.elongations.begin(), one.bed.elongations.end());
  return all;
}
std::string withinLimits(const Values& values, double low, double high) {
  const auto good = std::count_if(values.begin(), values.end(),
                                  [&](double value) { return value >= low && value <= high; });
  return fmt::format("{} of {}", good, values.size());
}

struct Line {
  std::string_view name;
  std::function<std::string(const Way&)> of;
};

std::vector<Line> placingLines() {
  return {
      {"plants; drifts",
       [](const Way& way) {
         return fmt::format("{:.0f}; {:.0f}",
                            sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.plants; })),
                            sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.drifts; })));
       }},
      {"placing rules broken",
       [](const Way& way) {
         return fmt::format(
             "{:.0f}", sumOf(valuesOf(way, kAll, [](auto& m) { return m.placingRulesBroken(); })));
       }},
      {"drifts of even count",
       [](const Way& way) {
         const double even = sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.evenDrifts; }));
         const double all = sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.drifts; }));
         return fmt::format("{:.0f} ({:.0f} %)", even, 100.0 * even / std::max(1.0, all));
       }},
      {"drifts in more than one piece",
       [](const Way& way) {
         return fmt::format("{:.0f}",
                            sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.brokenDrifts; })));
       }},
      {"ground taken, beds over 50 spacings²: median (range)",
       [](const Way& way) {
         return range(valuesOf(way, kLarge, [](auto& m) { return m.bed.groundTaken; }));
       }},
      {"of these from 0.93 to 1.03",
       [](const Way& way) {
         return withinLimits(valuesOf(way, kLarge, [](auto& m) { return m.bed.groundTaken; }), 0.93,
                             1.03);
       }},
      {"the same, beds at least 4 spacings wide",
       [](const Way& way) {
         return withinLimits(valuesOf(way, kLargeWide, [](auto& m) { return m.bed.groundTaken; }),
                             0.93, 1.03);
       }},
      {"the same, narrower beds",
       [](const Way& way) {
         return withinLimits(valuesOf(way, kLargeNarrow, [](auto& m) { return m.bed.groundTaken; }),
                             0.93, 1.03);
       }},
      {"the same over what paving, trunks and stepping places leave: median (range)",
       [](const Way& way) {
         return range(valuesOf(way, kLarge, [](auto& m) { return m.bed.freeGroundTaken; }));
       }},
      {"least distance over the mean of the two spacings: smallest",
       [](const Way& way) {
         return fmt::format(
             "{:.3f}",
             quantile(valuesOf(way, kAll, [](auto& m) { return m.bed.leastDistance; }), 0.0));
       }},
      {"mean nearest distance: median (range)",
       [](const Way& way) {
         return range(valuesOf(way, kLarge, [](auto& m) { return m.bed.meanNearest; }));
       }},
      {"share of bed within one spacing of a plant: median (range)",
       [](const Way& way) {
         return range(valuesOf(way, kLarge, [](auto& m) { return m.bed.covered; }));
       }},
      {"beds with 99 % and more of it",
       [](const Way& way) {
         return withinLimits(valuesOf(way, kLarge, [](auto& m) { return m.bed.covered; }), 0.99,
                             1.0);
       }},
  };
}

std::vector<Line> designLines() {
  return {
      {"length to width of drifts of 5 and more: median (tenths)",
       [](const Way& way) {
         const Values v = elongations(way, [](auto& m) { return !m.narrow(); });
         return fmt::format("{:.2f} ({:.2f} to {:.2f})", quantile(v, 0.5), quantile(v, 0.1),
                            quantile(v, 0.9));
       }},
      {"the same, beds under 4 spacings wide",
       [](const Way& way) {
         const Values v = elongations(way, [](auto& m) { return m.narrow(); });
         return fmt::format("{:.2f} ({:.2f} to {:.2f})", quantile(v, 0.5), quantile(v, 0.1),
                            quantile(v, 0.9));
       }},
      {"drifts that touch two others and more",
       [](const Way& way) {
         const double two =
             sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.touchTwo * m.bed.drifts; }));
         return fmt::format(
             "{:.1f} %",
             100.0 * two /
                 std::max(1.0, sumOf(valuesOf(way, kAll, [](auto& m) { return m.bed.drifts; }))));
       }},
      {"pairs of drifts of one species that touch; beds with any",
       [](const Way& way) {
         const auto pairs = valuesOf(way, kAll, [](auto& m) { return m.bed.besideOwn; });
         return fmt::format(
             "{:.0f}; {}", sumOf(pairs),
             std::count_if(pairs.begin(), pairs.end(), [](double n) { return n > 0; }));
       }},
      {"beds whose rows show, of those with 300 pairs and more",
       [](const Way& way) {
         const auto many = [](const Measured& m) { return m.bed.rows.pairs >= 300; };
         const Values shown = valuesOf(way, many, [](auto& m) { return m.rowsShow ? 1.0 : 0.0; });
         return fmt::format("{:.0f} of {}", sumOf(shown), shown.size());
       }},
      {"height for depth, score: mean",
       [](const Way& way) {
         return fmt::format("{:.2f}",
                            meanOf(valuesOf(way, kAll, [](auto& m) { return m.height; })));
       }},
      {"score of all rules: mean",
       [](const Way& way) {
         return fmt::format("{:.2f}", meanOf(valuesOf(way, kAll, [](auto& m) { return m.score; })));
       }},
      {"findings, all: sum; beds with any",
       [](const Way& way) {
         const Values v = valuesOf(way, kAll, [](auto& m) {
           return static_cast<double>(m.placingRulesBroken() + m.otherFindings());
         });
         const auto some = std::count_if(v.begin(), v.end(), [](double x) { return x > 0.0; });
         return fmt::format("{:.0f}; {}", sumOf(v), some);
       }},
  };
}

void append(std::string& out, const std::string& name, const std::vector<Way>& ways,
            const std::function<std::string(const Way&)>& of) {
  out += "| " + name + " |";
  for (const Way& way : ways) out += " " + of(way) + " |";
  out += "\n";
}

}  // namespace

std::string tableOf(const std::vector<Way>& ways) {
  std::string out = "| measure |";
  for (const Way& way : ways) out += " " + way.name + " |";
  out += "\n|---|";
  for (std::size_t i = 0; i < ways.size(); ++i) out += "---|";
  out += "\n";
  for (const Line& line : placingLines()) append(out, std::string(line.name), ways, line.of);
  for (const Line& line : designLines()) append(out, std::string(line.name), ways, line.of);
  for (const CheckEntry& check : allChecks()) {
    const auto count = [&](const Way& way) {
      return fmt::format("{:.0f}", sumOf(valuesOf(way, kAll, [&](const Measured& m) {
                           const auto at = m.findings.find(check.id);
                           return at == m.findings.end() ? 0.0 : at->second;
                         })));
    };
    append(out, fmt::format("findings: {}", check.title), ways, count);
  }
  return out;
}

}  // namespace tussock::bench

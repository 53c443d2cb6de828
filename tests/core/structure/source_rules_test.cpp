// SPDX-License-Identifier: MIT
// The rules of the folders, read off the sources themselves: who may include whom, what stays out
// of the core, and how long a file may grow.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace tussock {
namespace {

namespace fs = std::filesystem;

const std::vector<std::string> kCoreRanks{"units",   "geometry", "model",    "edit",
                                          "catalog", "sun",      "planting", "checks",
                                          "season",  "sheets",   "exchange", "store"};
const std::vector<std::string> kAppRanks{"files", "look",   "document", "canvas", "print",
                                         "tools", "panels", "window",   "cli"};
constexpr int kLongestFile = 400;

struct Source {
  std::string path;    // from the top of the tree
  std::string folder;  // "geometry"
  std::vector<std::string> lines;
};

std::vector<Source> sourcesUnder(const std::string& top) {
  const fs::path root = TUSSOCK_SOURCE_DIR;
  std::vector<Source> result;
  for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
    const auto extension = entry.path().extension();
    if (extension != ".h" && extension != ".cpp") continue;
    const fs::path relative = fs::relative(entry.path(), root);
    Source source{relative.generic_string(), {}, {}};
    if (std::distance(relative.begin(), relative.end()) > 2)
      source.folder = std::next(relative.begin())->string();
    std::ifstream file(entry.path());
    for (std::string line; std::getline(file, line);) source.lines.push_back(line);
    result.push_back(std::move(source));
  }
  return result;
}

std::vector<std::string> includesOf(const Source& source) {
  static const std::regex kInclude(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
  std::vector<std::string> result;
  std::smatch match;
  for (const std::string& line : source.lines)
    if (std::regex_search(line, match, kInclude)) result.push_back(match[1]);
  return result;
}

std::ptrdiff_t rankOf(const std::vector<std::string>& ranks, const std::string& folder) {
  return std::find(ranks.begin(), ranks.end(), folder) - ranks.begin();
}

void expectRanksKept(const std::string& top, const std::vector<std::string>& ranks) {
  const std::regex inside("^" + top + "/([a-z_]+)/.*");
  std::smatch match;
  for (const Source& source : sourcesUnder(top)) {
    if (source.folder.empty()) continue;
    const auto own = rankOf(ranks, source.folder);
    EXPECT_LT(own, std::ssize(ranks)) << source.path << " lies in a folder without a rank";
    for (const std::string& include : includesOf(source))
      if (std::regex_match(include, match, inside)) {
        EXPECT_LE(rankOf(ranks, match[1]), own) << source.path << " reaches up to " << include;
      }
  }
}

TEST(SourceRules, CoreFoldersIncludeOnlyThoseAbove) {
  expectRanksKept("core", kCoreRanks);
}

TEST(SourceRules, AppFoldersIncludeOnlyThoseAbove) {
  expectRanksKept("app", kAppRanks);
}

TEST(SourceRules, CoreKnowsNoQtAndNoApp) {
  const std::regex forbidden(R"(^(Q[A-Z].*|Qt.*|app/.*))");
  for (const Source& source : sourcesUnder("core"))
    for (const std::string& include : includesOf(source))
      EXPECT_FALSE(std::regex_match(include, forbidden)) << source.path << ": " << include;
}

TEST(SourceRules, BoostStaysBehindGeometry) {
  for (const std::string top : {"core", "app"})
    for (const Source& source : sourcesUnder(top))
      for (const std::string& include : includesOf(source))
        if (include.starts_with("boost/") || include == "core/geometry/boost_adapt.h") {
          EXPECT_TRUE(source.path.starts_with("core/geometry/")) << source.path << ": " << include;
        }
}

TEST(SourceRules, SqlStaysInTheStore) {
  for (const std::string top : {"core", "app"})
    for (const Source& source : sourcesUnder(top))
      for (const std::string& include : includesOf(source))
        if (include.starts_with("SQLiteCpp/") || include == "sqlite3.h") {
          EXPECT_EQ(source.folder, "store") << source.path << ": " << include;
        }
}

TEST(SourceRules, EveryFileNamesItsLicenceFirst) {
  for (const std::string top : {"core", "app", "tests"})
    for (const Source& source : sourcesUnder(top)) {
      ASSERT_FALSE(source.lines.empty()) << source.path;
      EXPECT_EQ(source.lines.front(), "// SPDX-License-Identifier: MIT") << source.path;
    }
}

TEST(SourceRules, NoFileGrowsTooLong) {
  for (const std::string top : {"core", "app"})
    for (const Source& source : sourcesUnder(top))
      EXPECT_LE(std::ssize(source.lines), kLongestFile) << source.path;
}

TEST(SourceRules, TheScanFindsTheSources) {
  EXPECT_GT(sourcesUnder("core").size(), 50u);
  EXPECT_GT(sourcesUnder("app").size(), 2u);
}

}  // namespace
}  // namespace tussock

// SPDX-License-Identifier: MIT
#include <charconv>
#include <memory>
#include <ostream>

#include "app/cli/commands.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

struct HistoryOptions {
  std::string file;
  int undo = 0, redo = 0;
  bool forget = false;
};

using Step = std::optional<std::string> (YardFile::*)();

void repeat(YardFile& file, int times, Step step, const char* done, Console& console) {
  for (int i = 0; i < times; ++i) {
    const auto label = (file.*step)();
    if (!label) {
      console.err << "Only " << i << " of " << times << " could be done; the history ends there.\n";
      return;
    }
    console.out << done << ": " << *label << '\n';
  }
}

void print(const YardFile& file, std::ostream& out) {
  for (const HistoryEntry& entry : file.history())
    out << entry.number << "  " << entry.time << "  " << entry.label
        << (entry.undone ? "  (undone)" : "") << '\n';
}

ExitCode runHistory(const HistoryOptions& options, Console& console) {
  const bool writes = options.undo > 0 || options.redo > 0 || options.forget;
  YardFile file = YardFile::open(options.file,
                                 writes ? YardFile::Access::ReadWrite : YardFile::Access::ReadOnly);
  repeat(file, options.undo, &YardFile::undo, "Undone", console);
  repeat(file, options.redo, &YardFile::redo, "Redone", console);
  if (options.forget) {
    file.forgetHistory();
    console.out << "The history is dropped; edits made before now cannot be undone.\n";
  }
  if (!writes) print(file, console.out);
  return ExitCode::Done;
}

CLI::Validator atLeastOne() {
  return {[](const std::string& text) {
            int count = 0;
            const auto [end, error] =
                std::from_chars(text.data(), text.data() + text.size(), count);
            const bool whole = error == std::errc{} && end == text.data() + text.size();
            return whole && count > 0 ? std::string()
                                      : "'" + text + "' is no number of edits. Give 1 or more.";
          },
          "COUNT"};
}

}  // namespace

void addHistory(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("history", "List the edits; undo, redo or drop them");
  auto options = std::make_shared<HistoryOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  auto* undo =
      command->add_option("--undo", options->undo, "Undo this many edits")->check(atLeastOne());
  auto* redo =
      command->add_option("--redo", options->redo, "Redo this many edits")->check(atLeastOne());
  undo->excludes(redo);
  command->add_flag("--forget", options->forget,
                    "Drop the history and pictures no longer used, and make the file small");
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runHistory(*options, console); };
  });
}

}  // namespace tussock

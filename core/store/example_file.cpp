// SPDX-License-Identifier: MIT
#include "core/store/example_file.h"

#include "core/exchange/example.h"
#include "core/store/yard_file.h"

namespace tussock {

// The picture can only be kept along with an edit that names it; forgetting the history afterwards
// leaves a file that begins with the example.
void writeExample(const std::filesystem::path& path, const Catalogue& facts) {
  const Example example = buildExample(facts);
  Yard bare;
  bare.settings = example.yard.settings;
  YardFile file = YardFile::create(path, bare);
  (void)file.putBlob(example.picture);
  file.commit(difference(bare, example.yard, "Lay out the example"));
  file.forgetHistory();
}

}  // namespace tussock

// SPDX-License-Identifier: MIT
// A small yard and small edits for tests of the yard file.
#pragma once

#include <string>

#include "core/edit/draft.h"
#include "tests/support/yard_builder.h"

namespace tussock::test {

[[nodiscard]] inline Yard twoDrifts() {
  return YardBuilder()
      .bed("Front", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))")
      .drift("Echinacea purpurea", row(5, 0.4, {1, 1}))
      .drift("Carex vulpinoidea", row(7, 0.3, {1, 2}))
      .build();
}

[[nodiscard]] inline ChangeSet renameTo(const Yard& yard, const std::string& name) {
  Draft draft(yard);
  Settings settings = yard.settings;
  settings.name = name;
  draft.put(settings);
  return draft.finish("Rename to " + name);
}

[[nodiscard]] inline ChangeSet addPhoto(const Yard& yard, Id<Photo> id, const std::string& hash) {
  Draft draft(yard);
  Photo photo;
  photo.id = id;
  photo.name = "Aerial";
  photo.contentHash = hash;
  draft.put(photo);
  return draft.finish("Add photo");
}

}  // namespace tussock::test

// SPDX-License-Identifier: MIT
#include "core/store/pending_pictures.h"

#include "core/store/blob_table.h"
#include "core/store/sha256.h"

namespace tussock {

namespace {

template <class F>
void forEachPhotoAfter(const ChangeSet& edit, F&& f) {
  for (const Change& change : edit.changes)
    if (const Photo* photo = change.after ? std::get_if<Photo>(&*change.after) : nullptr) f(*photo);
}

}  // namespace

std::string PendingPictures::add(const std::string& bytes) {
  std::string hash = sha256(bytes);
  bytesByHash_.emplace(hash, bytes);
  return hash;
}

const std::string* PendingPictures::find(const std::string& hash) const {
  const auto found = bytesByHash_.find(hash);
  return found == bytesByHash_.end() ? nullptr : &found->second;
}

void PendingPictures::write(SQLite::Database& database, const ChangeSet& edit) const {
  BlobTable blobs(database);
  forEachPhotoAfter(edit, [&](const Photo& photo) {
    if (blobs.has(photo.contentHash)) return;
    const std::string* bytes = find(photo.contentHash);
    if (bytes == nullptr)
      throw EditConflict("The picture of photo \"" + photo.name + "\" is missing. Add it again.");
    blobs.insert(photo.contentHash, *bytes);
  });
}

void PendingPictures::forget(const ChangeSet& edit) {
  forEachPhotoAfter(edit, [&](const Photo& photo) { bytesByHash_.erase(photo.contentHash); });
}

}  // namespace tussock

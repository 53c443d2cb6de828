// SPDX-License-Identifier: MIT
// Pictures in a yard file: kept once, written with the edit that names them, gone when forgotten.
#include <gmock/gmock.h>

#include "core/store/yard_file.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;
using test::addPhoto;

class Pictures : public testing::Test {
 protected:
  test::TemporaryFolder folder_;
  fs::path path_ = folder_ / "a.yard";
  YardFile file_ = YardFile::create(path_, test::twoDrifts());
  const std::string bytes_ = std::string(200000, 'p') + std::string("\0\xff", 2);

  Id<Photo> add(const std::string& bytes) {
    const auto id = file_.ids().take<Photo>();
    file_.commit(addPhoto(file_.yard(), id, file_.putBlob(bytes)));
    return id;
  }
  void remove(Id<Photo> id) {
    Draft draft(file_.yard());
    draft.remove(id);
    file_.commit(draft.finish("Remove photo"));
  }
  [[nodiscard]] std::int64_t kept() const {
    return test::askSql(path_, "SELECT count(*) FROM blob");
  }
};

TEST_F(Pictures, AreHeldBackUntilAnEditNamesThem) {
  const std::string hash = file_.putBlob(bytes_);
  EXPECT_EQ(file_.blob(hash), bytes_);
  EXPECT_EQ(kept(), 0);
  file_.commit(addPhoto(file_.yard(), file_.ids().take<Photo>(), hash));
  EXPECT_EQ(kept(), 1);
  EXPECT_EQ(YardFile::open(path_).blob(hash), bytes_);
}

TEST_F(Pictures, AreKeptOnceHoweverManyPhotosShowThem) {
  add(bytes_);
  add(bytes_);
  add("another");
  EXPECT_EQ(kept(), 2);
  EXPECT_THAT(file_.verify(), testing::IsEmpty());
}

TEST_F(Pictures, StayAsLongAsHistoryNamesThem) {
  const auto id = add(bytes_);
  const std::string hash = file_.yard().photos.begin()->contentHash;
  remove(id);
  EXPECT_EQ(kept(), 1);
  file_.undo();
  EXPECT_EQ(file_.blob(hash), bytes_);
}

TEST_F(Pictures, OfADeletedPhotoAreGoneOnceHistoryIsForgotten) {
  remove(add(bytes_));
  add("still shown");
  const auto before = fs::file_size(path_);
  file_.forgetHistory();
  EXPECT_EQ(kept(), 1);
  EXPECT_LT(fs::file_size(path_) + 200000, before + 4096);
  EXPECT_EQ(test::bytesOf(path_).find("pppp"), std::string::npos);
  EXPECT_THAT(file_.verify(), testing::IsEmpty());
}

TEST_F(Pictures, ThatAreMissingRefuseTheEdit) {
  const Yard before = file_.yard();
  EXPECT_THROW(file_.commit(addPhoto(before, Id<Photo>(50), std::string(64, 'a'))), EditConflict);
  EXPECT_EQ(file_.yard(), before);
  EXPECT_EQ(YardFile::open(path_).yard(), before);
}

TEST_F(Pictures, ThatWereSpoiltAreNotGivenOut) {
  add(bytes_);
  test::runSql(path_, "UPDATE blob SET bytes = x'00'");
  EXPECT_THROW((void)file_.blob(file_.yard().photos.begin()->contentHash), StoreError);
  EXPECT_THROW((void)file_.blob(std::string(64, 'b')), StoreError);
}

}  // namespace
}  // namespace tussock

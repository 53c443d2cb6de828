// SPDX-License-Identifier: MIT
#include "core/store/verify.h"

#include <gmock/gmock.h>

#include "core/store/yard_file.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

struct Tampering {
  const char* name;
  const char* sql;
  const char* words;
};
void PrintTo(const Tampering& tampering, std::ostream* out) {
  *out << tampering.name;
}

class Verify : public testing::TestWithParam<Tampering> {
 protected:
  Verify() {
    YardFile file = YardFile::create(path_, test::twoDrifts());
    const auto photo = file.ids().take<Photo>();
    file.commit(test::addPhoto(file.yard(), photo, file.putBlob("picture")));
    file.commit(test::renameTo(file.yard(), "Hill"));
    file.commit(test::renameTo(file.yard(), "Dale"));
    file.undo();
  }
  test::TemporaryFolder folder_;
  std::filesystem::path path_ = folder_ / "a.yard";
};

TEST_P(Verify, NamesWhatIsWrong) {
  EXPECT_THAT(YardFile::open(path_).verify(), IsEmpty());
  test::runSql(path_, GetParam().sql);
  EXPECT_THAT(YardFile::open(path_).verify(), Contains(HasSubstr(GetParam().words)));
}

INSTANTIATE_TEST_SUITE_P(
    Tampered, Verify,
    testing::Values(
        Tampering{"index gone", "DROP INDEX plant_drift", "index plant_drift is missing"},
        Tampering{"table added", "CREATE TABLE more (x)", "table more is not one of a yard file"},
        Tampering{"trigger added",
                  "CREATE TRIGGER t AFTER UPDATE ON bed BEGIN DELETE FROM plant; END",
                  "trigger t is not one"},
        Tampering{"bed gone", "DELETE FROM bed", "drift 3 names a bed that is not there"},
        Tampering{"photo's picture gone", "DELETE FROM blob", "names a blob that is not there"},
        Tampering{"picture in history gone", "DELETE FROM photo; DELETE FROM blob",
                  "named in the history, is missing"},
        Tampering{"picture changed", "UPDATE blob SET bytes = x'00'", "is not what it was"},
        Tampering{"outline crossed",
                  "UPDATE bed SET outline_wkt = 'POLYGON ((0 0, 8 4, 8 0, 0 4, 0 0))'",
                  "bed 2, outline_wkt: "},
        Tampering{"id shared", "INSERT INTO plan_code VALUES (4, 'Carex', 'C')",
                  "plant 4: something else has this id too"},
        Tampering{"next id low", "UPDATE yard SET next_id = 9", "taken already"},
        Tampering{"number too large",
                  "PRAGMA ignore_check_constraints = ON; UPDATE drift SET spacing_m = 9e999",
                  "spacing_m: is not a finite number"},
        Tampering{"row changed", "UPDATE settings SET name = 'Other'", "does not fit"},
        Tampering{"history not JSON", "UPDATE history SET change_json = '{' WHERE number = 2",
                  "History entry 2 (Rename to Hill) does not fit"},
        Tampering{"history edited",
                  "UPDATE history SET change_json = replace(change_json, 'Hill', 'Holl')"
                  " WHERE number = 3",
                  "History entry 3 (Rename to Dale) does not fit"},
        Tampering{"label edited", "UPDATE history SET label = 'x' WHERE number = 1",
                  "History entry 1 (x) is not as written"},
        Tampering{"history mixed", "UPDATE history SET state = 'undone' WHERE number = 1",
                  "something done follows something undone"}));

TEST(VerifyOpenFile, NoticesRowsThatAreNotTheYardInHand) {
  const test::TemporaryFolder folder;
  const YardFile file = YardFile::create(folder / "a.yard", test::twoDrifts());
  test::runSql(folder / "a.yard", "UPDATE plant SET at_x_m = 1.25 WHERE id = 4");
  EXPECT_THAT(file.verify(), Contains(HasSubstr("not the yard that is open")));
}

TEST(VerifyOpenFile, NoticesDamagedPages) {
  const test::TemporaryFolder folder;
  const auto path = folder / "a.yard";
  (void)YardFile::create(path, test::twoDrifts());
  // The index on plants is not read when a file is opened.
  const std::int64_t page =
      test::askSql(path, "SELECT rootpage FROM sqlite_schema WHERE name = 'plant_drift'");
  std::string bytes = test::bytesOf(path);
  bytes.replace(static_cast<std::size_t>(page) * 4096 - 20, 20, 20, '\x7f');
  test::writeBytes(path, bytes);
  EXPECT_THAT(YardFile::open(path).verify(), Contains(HasSubstr("The file's pages")));
}

}  // namespace
}  // namespace tussock

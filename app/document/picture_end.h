// SPDX-License-Identifier: MIT
// Whether a picture file has been cut short. A decoder makes do with what there is and fills the
// rest with grey, so the file itself is asked for its end.
#pragma once

#include <QByteArray>

namespace tussock {

// True for a JPEG or PNG that ends before its end marker (EOI: ITU-T T.81, B.1.1; IEND: ISO/IEC
// 15948, 5.6). What follows the marker does not matter. False for bytes of any other kind.
[[nodiscard]] bool isCutShort(const QByteArray& bytes);

}  // namespace tussock

// SPDX-License-Identifier: MIT
#include "app/document/picture_end.h"

#include <cstdint>
#include <QByteArrayView>
#include <QtEndian>

namespace tussock {

namespace {

using Size = qsizetype;

constexpr QByteArrayView kPng("\x89PNG\r\n\x1a\n");
constexpr QByteArrayView kJpeg("\xff\xd8\xff");
constexpr Size kPngAround = 12;  // bytes of a chunk beside its data: length, type, checksum

std::uint8_t byteAt(const QByteArray& bytes, Size at) {
  return std::uint8_t(bytes[at]);
}

bool pngEnds(const QByteArray& bytes) {
  Size at = kPng.size();
  while (at + kPngAround <= bytes.size()) {
    const bool last = bytes.sliced(at + 4, 4) == "IEND";
    at += kPngAround + Size(qFromBigEndian<quint32>(bytes.constData() + at));
    if (last) return at <= bytes.size();
  }
  return false;
}

// Where the next marker begins: past coded data, in which FF 00 and the restart markers (D0 to D7)
// are no end, and past fill bytes.
Size nextMarker(const QByteArray& bytes, Size at) {
  for (; at + 1 < bytes.size(); ++at) {
    const std::uint8_t code = byteAt(bytes, at + 1);
    if (byteAt(bytes, at) != 0xFF || code == 0x00 || code == 0xFF) continue;
    if (code < 0xD0 || code > 0xD7) return at;
  }
  return bytes.size();
}

// From segment to segment by their lengths: a small picture within one has an end of its own.
bool jpegEnds(const QByteArray& bytes) {
  Size at = nextMarker(bytes, 2);
  while (at + 1 < bytes.size()) {
    if (byteAt(bytes, at + 1) == 0xD9) return true;
    if (at + 4 > bytes.size()) return false;
    at = nextMarker(bytes, at + 2 + Size(qFromBigEndian<quint16>(bytes.constData() + at + 2)));
  }
  return false;
}

}  // namespace

bool isCutShort(const QByteArray& bytes) {
  if (bytes.startsWith(kPng)) return !pngEnds(bytes);
  if (bytes.startsWith(kJpeg)) return !jpegEnds(bytes);
  return false;
}

}  // namespace tussock

// SPDX-License-Identifier: MIT
// Decoded photos, kept while there is room.
#pragma once

#include <QByteArray>
#include <QCache>
#include <QImage>
#include <QString>

namespace tussock {

// Turned as the camera says (EXIF orientation). A picture of more than 64 megapixels is decoded
// smaller. Null when it cannot be read.
[[nodiscard]] QImage decodePicture(const QByteArray& bytes);
// Why a picture that decodes to null does: that it is none, is too large or is damaged. A sentence
// that starts after the picture's name.
[[nodiscard]] QString troubleWithPicture(const QByteArray& bytes);

class Pictures {
 public:
  Pictures() : images_(kKilobytes) {}

  template <class Load>
  [[nodiscard]] QImage get(const QString& hash, Load load) {
    if (const QImage* kept = images_.object(hash)) return *kept;
    const QImage image = decodePicture(load());
    keep(hash, image);
    return image;
  }
  void keep(const QString& hash, const QImage& image) {
    images_.insert(hash, new QImage(image), int(image.sizeInBytes() / 1024) + 1);
  }
  void clear() { images_.clear(); }

 private:
  static constexpr int kKilobytes = 512 * 1024;
  QCache<QString, QImage> images_;
};

}  // namespace tussock

// SPDX-License-Identifier: MIT
#include "app/document/pictures.h"

#include <QBuffer>
#include <QStringList>
#include <QtEndian>

#include <gtest/gtest.h>

namespace tussock {
namespace {

void putNumber(QByteArray& bytes, quint32 number) {
  const quint32 big = qToBigEndian(number);
  bytes.append(reinterpret_cast<const char*>(&big), 4);
}

// CRC-32 as PNG has it (ISO 3309, ITU-T V.42), bit by bit.
quint32 crcOf(const QByteArray& bytes) {
  quint32 crc = 0xFFFFFFFFu;
  for (const char byte : bytes) {
    crc ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1u) != 0 ? 0xEDB88320u : 0u);
  }
  return ~crc;
}

// The signature and head of a PNG of that size (PNG 1.2, 11.2.2 IHDR), with no pixels behind it.
QByteArray pngHead(quint32 width, quint32 height) {
  QByteArray head("IHDR");
  putNumber(head, width), putNumber(head, height);
  head.append("\x08\x02\x00\x00\x00", 5);  // 8 bits, red green blue
  QByteArray png("\x89PNG\r\n\x1a\n");
  putNumber(png, 13);
  png += head;
  putNumber(png, crcOf(head));
  putNumber(png, 0);
  png += "IDAT";
  putNumber(png, crcOf("IDAT"));
  return png;
}

QByteArray encoded(const QImage& image, const char* format) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  EXPECT_TRUE(image.save(&buffer, format));
  return buffer.data();
}

void expectTrouble(const QByteArray& bytes, const QStringList& parts) {
  const QString trouble = troubleWithPicture(bytes);
  for (const QString& part : parts)
    EXPECT_TRUE(trouble.contains(part)) << part.toStdString() << ": " << trouble.toStdString();
}

TEST(Pictures, WhatIsNoPictureIsToldSo) {
  for (const QByteArray& bytes : {QByteArray("half a letter"), QByteArray()}) {
    EXPECT_TRUE(decodePicture(bytes).isNull());
    expectTrouble(bytes, {QStringLiteral("is no picture"), QStringLiteral("PNG or a JPEG")});
  }
}

TEST(Pictures, ADamagedOneIsToldSo) {
  const QByteArray bytes = pngHead(40, 30);
  EXPECT_TRUE(decodePicture(bytes).isNull());
  expectTrouble(bytes, {QStringLiteral("is damaged"), QStringLiteral("save it anew")});
}

TEST(Pictures, AHugeOneThatFailsIsToldWithItsSizeTheLimitAndTheRemedy) {
  expectTrouble(pngHead(12000, 9000),
                {QStringLiteral("12000 by 9000 pixels"), QStringLiteral("108 megapixels"),
                 QStringLiteral("Up to 64 megapixels"), QStringLiteral("Crop it")});
}

// 48 megapixels are 192 MB decoded, more than Qt allows unless asked.
TEST(Pictures, OneOfAPhoneOf48MegapixelsIsShown) {
  QImage image(8000, 6000, QImage::Format_Grayscale8);
  image.fill(Qt::gray);
  EXPECT_EQ(decodePicture(encoded(image.convertToFormat(QImage::Format_RGB888), "PNG")).size(),
            QSize(8000, 6000));
}

}  // namespace
}  // namespace tussock

// SPDX-License-Identifier: MIT
#include "app/print/pdf_properties.h"

#define POINTERHOLDER_TRANSITION 4  // the library's newer kind of shared pointer
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace tussock {

namespace {

constexpr double kPointsPerMillimetre = 72.0 / 25.4;

// Pages come in whole points; the exact box keeps the drawing's top left corner.
QPDFObjectHandle exactBox(QPDFObjectHandle page, const QSizeF& millimetres) {
  const double top = page.getKey("/MediaBox").getArrayItem(3).getNumericValue();
  const double width = millimetres.width() * kPointsPerMillimetre;
  const double height = millimetres.height() * kPointsPerMillimetre;
  return QPDFObjectHandle::newArray(QPDFObjectHandle::Rectangle(0.0, top - height, width, top));
}

}  // namespace

QByteArray withPrintSettings(const QByteArray& pdf, const std::vector<QSizeF>& pages) {
  QPDF document;
  document.processMemoryFile("plan", pdf.constData(), static_cast<std::size_t>(pdf.size()));
  QPDFObjectHandle preferences = QPDFObjectHandle::newDictionary();
  preferences.replaceKey("/PrintScaling", QPDFObjectHandle::newName("/None"));
  preferences.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
  document.getRoot().replaceKey("/ViewerPreferences", preferences);
  std::size_t number = 0;
  for (QPDFPageObjectHelper page : QPDFPageDocumentHelper(document).getAllPages()) {
    if (number == pages.size()) break;
    QPDFObjectHandle object = page.getObjectHandle();
    object.replaceKey("/MediaBox", exactBox(object, pages[number++]));
  }
  QPDFWriter writer(document);
  writer.setOutputMemory();
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()),
          static_cast<qsizetype>(buffer->getSize())};
}

}  // namespace tussock

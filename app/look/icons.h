// SPDX-License-Identifier: MIT
// Our own line icons, in the colours of the theme in force when they are painted.
#pragma once

#include <QIcon>
#include <QString>

#include "core/checks/finding.h"

namespace tussock {

// `name` is a file of resources/icons without its ending: "bed", "undo", "finding-alert". A file
// is drawn in the colours of the light theme; each is put into the colour that has its part in
// the theme shown.
[[nodiscard]] QIcon icon(const QString& name);
// The mark of a finding: shape as well as colour tell how much it matters.
[[nodiscard]] QString findingMark(Severity severity);
// For painting into a picture of one's own.
void paintIcon(QPainter& painter, const QString& name, const QRectF& rect);

}  // namespace tussock

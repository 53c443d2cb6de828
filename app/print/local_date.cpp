// SPDX-License-Identifier: MIT
#include "app/print/local_date.h"

#include <QDate>

namespace tussock {

Date localToday() {
  const QDate day = QDate::currentDate();
  return Date(std::chrono::year(day.year()), std::chrono::month(unsigned(day.month())),
              std::chrono::day(unsigned(day.day())));
}

}  // namespace tussock

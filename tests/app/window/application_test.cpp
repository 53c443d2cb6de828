// SPDX-License-Identifier: MIT
#include "app/window/application.h"

#include <QSignalSpy>
#include <stdexcept>

#include <gtest/gtest.h>

namespace tussock {
namespace {

class Failing : public QObject {
 public:
  bool event(QEvent*) override { throw std::runtime_error("The disk is full."); }
};

TEST(Application, AFailureNobodyCaughtIsToldAndTheProgramGoesOn) {
  auto* application = qobject_cast<Application*>(QCoreApplication::instance());
  ASSERT_TRUE(application);
  QSignalSpy told(application, &Application::troubled);
  Failing receiver;
  QCoreApplication::postEvent(&receiver, new QEvent(QEvent::User));
  QCoreApplication::sendPostedEvents(&receiver);
  ASSERT_EQ(told.count(), 1);
  EXPECT_TRUE(told[0][0].toString().contains(QStringLiteral("The disk is full.")));
}

}  // namespace
}  // namespace tussock

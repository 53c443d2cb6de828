// SPDX-License-Identifier: MIT
#include "app/document/substitutes.h"

#include <QCoreApplication>
#include <QMetaObject>

namespace tussock {

namespace {
constexpr std::size_t kMost = 5;
}

Substitutes::Substitutes(Document& document, QObject* parent)
    : QObject(parent), document_(document) {
  connect(&document_, &Document::changed, this, &Substitutes::drop);
  connect(&document_, &Document::opened, this, &Substitutes::drop);
}

Substitutes::~Substitutes() {
  ++run_;
  thread_ = {};  // waits
}

void Substitutes::look(const std::string& species) {
  const std::uint64_t run = ++run_;
  species_ = species;
  facts_ = document_.facts();
  found_.clear();
  thread_ = std::jthread([this, run, species, yard = document_.yard(), facts = facts_,
                          sun = document_.sunMap()](const std::stop_token& stop) {
    std::vector<Substitute> found = substitutesFor({yard, facts, sun.get()}, species, kMost, stop);
    QMetaObject::invokeMethod(
        this, [this, run, found = std::move(found)]() mutable { hand(run, std::move(found)); });
  });
  setState(State::Looking);
}

void Substitutes::drop() {
  if (state_ == State::Idle) return;
  ++run_;
  thread_ = {};
  found_.clear();
  setState(State::Idle);
}

void Substitutes::hand(std::uint64_t run, std::vector<Substitute> found) {
  if (run != run_) return;
  found_ = std::move(found);
  setState(State::Found);
}

bool Substitutes::put(const Species& with) {
  const Substitution made = substitute(document_.yard(), species_, with, document_.ids());
  return !made.edit.empty() && document_.commit(made.edit);
}

void Substitutes::wait() {
  if (thread_.joinable()) thread_.join();
  QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
}

void Substitutes::setState(State state) {
  state_ = state;
  emit changed();
}

}  // namespace tussock

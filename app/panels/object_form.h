// SPDX-License-Identifier: MIT
// Puts the fields of one object of the yard into a form, each committing one edit.
#pragma once

#include <QCoreApplication>

#include "app/document/document.h"
#include "app/panels/field_form.h"
#include "app/panels/field_text.h"
#include "core/edit/draft.h"

namespace tussock {

template <class T>
[[nodiscard]] const T* objectIn(const Yard& yard, Id<T> id) {
  if constexpr (std::is_same_v<T, Settings>) {
    return &yard.settings;
  } else {
    return collectionOf<T>(yard).find(id);
  }
}

// Changes one object; nothing when there is none such.
template <class T, class Change>
ChangeSet changeOf(const Document& document, Id<T> id, const QString& label, Change change) {
  const T* object = objectIn(document.yard(), id);
  if (!object) return {};
  T after = *object;
  change(after);
  Draft draft(document.yard());
  draft.put(std::move(after));
  return draft.finish(label.toStdString());
}

// One edit that changes one object; false when it was not made.
template <class T, class Change>
bool editObject(Document& document, Id<T> id, const QString& label, Change change) {
  return objectIn(document.yard(), id) && document.commit(changeOf(document, id, label, change));
}

template <class T>
class ObjectForm {
 public:
  ObjectForm(FieldForm& form, Document& document, Id<T> id)
      : form_(form), document_(document), id_(id) {}

  void text(const char* name, const QString& label, std::string T::*member) {
    field(
        name, label, [member](const T& o) { return QString::fromStdString(o.*member); },
        [member](T& o, const QString& typed) {
          o.*member = typed.toStdString();
          return QString();
        });
  }
  void length(const char* name, const QString& label, Length T::*member, LengthBounds bounds) {
    Document& document = document_;
    const auto units = [&document] { return document.yard().settings.units; };
    field(
        name, label, [member, units](const T& o) { return lengthText(o.*member, units()); },
        [member, units, bounds](T& o, const QString& typed) {
          return readLength(typed, units(), bounds, o.*member);
        });
  }
  void share(const char* name, const QString& label, double T::*member) {
    field(
        name, label, [member](const T& o) { return shareText(o.*member); },
        [member](T& o, const QString& typed) { return readShare(typed, o.*member); });
  }
  void day(const char* name, const QString& label, MonthDay T::*member) {
    field(
        name, label, [member](const T& o) { return dayText(o.*member); },
        [member](T& o, const QString& typed) { return readDay(typed, o.*member); });
  }
  template <class E>
  void choice(const char* name, const QString& label, E T::*member, const QStringList& words) {
    form_.addChoice(
        QLatin1String(name), label, words,
        [get = get(), member] {
          const T* o = get();
          return o ? int(o->*member) : 0;
        },
        [*this, label, member](int index) {
          edit(label, [member, index](T& o) { o.*member = E(index); });
        });
  }
  void tick(const char* name, const QString& words, bool T::*member) {
    form_.addTick(
        QLatin1String(name), words,
        [get = get(), member] {
          const T* o = get();
          return o && o->*member;
        },
        [*this, words, member](bool on) { edit(words, [member, on](T& o) { o.*member = on; }); });
  }
  // show(const T&) gives the text; take(T&, text) sets the value or says what is wrong.
  template <class Show, class Take>
  void field(const char* name, const QString& label, Show show, Take take) {
    form_.addField(
        QLatin1String(name), label,
        [shown = shown(), show] {
          const T* o = shown();
          return o ? show(*o) : QString();
        },
        [*this, label, take](const QString& typed) {
          const T* o = get()();
          if (!o) return QString();
          T probe = *o;
          const QString wrong = take(probe, typed);
          if (wrong.isEmpty()) edit(label, [&probe](T& after) { after = probe; });
          return wrong;
        });
  }
  template <class Show>
  void fact(const char* name, const QString& label, Show show) {
    form_.addFact(QLatin1String(name), label, [shown = shown(), show] {
      const T* o = shown();
      return o ? show(*o) : QString();
    });
  }
  template <class Change>
  void edit(const QString& label, Change change) const {
    const QString what = label.isEmpty() ? label : label.left(1).toLower() + label.mid(1);
    editObject(document_, id_, QCoreApplication::translate("ObjectForm", "Change %1").arg(what),
               change);
  }

 private:
  [[nodiscard]] auto get() const {
    return [&document = document_, id = id_] { return objectIn(document.yard(), id); };
  }

  // With the edit in hand made.
  [[nodiscard]] auto shown() const {
    return [get = get(), &form = form_, id = id_]() -> const T* {
      if constexpr (!std::is_same_v<T, Settings>)
        if (form.previewed())
          if (const T* o = std::get_if<T>(&*form.previewed()); o && o->id == id) return o;
      return get();
    };
  }

  FieldForm& form_;
  Document& document_;
  Id<T> id_;
};

}  // namespace tussock

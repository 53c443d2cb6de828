// SPDX-License-Identifier: MIT
#include <QLineEdit>

#include "app/panels/form_words.h"
#include "app/panels/forms.h"
#include "app/panels/object_form.h"
#include "app/panels/photo_fade.h"

namespace tussock {

namespace {

QString readExpiry(const QString& typed, std::optional<Date>& value) {
  if (typed.trimmed().isEmpty()) {
    value.reset();
    return {};
  }
  const auto read = parseDate(typed.trimmed().toStdString());
  if (!read) return formTr("Write a date as year-month-day, such as 2027-04-14.");
  value = read;
  return {};
}

template <class T>
void addOutline(ObjectForm<T>& object, Document& document, const char* area, const char* edge) {
  object.fact(area, formTr("Area"),
              [&document](const T& o) { return areaText(document, areaOf(o.outline)); });
  object.fact(edge, formTr("Around"), [&document](const T& o) {
    return lengthText(perimeterOf(o.outline), document.yard().settings.units);
  });
}

void addFade(FieldForm& form, Document& document, Id<Photo> id) {
  form.addSlider(
      QStringLiteral("photo-fade"), formTr("Fade"),
      [&document, id] {
        const Photo* p = objectIn(document.yard(), id);
        return p ? fadeOf(*p) : 0;
      },
      [&document, id](int value) {
        document.commitStep(
            changeOf(document, id, formTr("Fade photo"), [value](Photo& p) { setFade(p, value); }));
      });
}

}  // namespace

void fillForm(FieldForm& form, Document& document, Id<LotLine> id) {
  ObjectForm<LotLine> lot(form, document, id);
  lot.text("lot-name", formTr("Name"), &LotLine::name);
  addOutline(lot, document, "lot-area", "lot-around");
  form.addNote(
      formTr("A drawn lot line is no survey. Go by the recorded plat or a licensed surveyor."));
}

void fillForm(FieldForm& form, Document& document, Id<Paving> id) {
  ObjectForm<Paving> paving(form, document, id);
  paving.text("paving-name", formTr("Name"), &Paving::name);
  addOutline(paving, document, "paving-area", "paving-around");
}

void fillForm(FieldForm& form, Document& document, Id<SteppingPlace> id) {
  ObjectForm<SteppingPlace>(form, document, id)
      .length("step-radius", formTr("Radius"), &SteppingPlace::radius,
              {Length::centimetres(5), Length::metres(2)});
}

void fillForm(FieldForm& form, Document& document, Id<WaterPoint> id) {
  ObjectForm<WaterPoint>(form, document, id).text("water-name", formTr("Name"), &WaterPoint::name);
}

void fillForm(FieldForm& form, Document& document, Id<HeightLimit> id) {
  ObjectForm<HeightLimit> limit(form, document, id);
  limit.text("limit-name", formTr("Name"), &HeightLimit::name);
  limit.length("limit-height", formTr("Height limit"), &HeightLimit::height,
               {Length(), Length::metres(30)});
  limit.text("limit-reason", formTr("Reason"), &HeightLimit::reason);
  form.addNote(
      formTr("Holds for plants, fences and buildings alike. The local code decides the height and "
             "where it is measured from."));
}

void fillForm(FieldForm& form, Document& document, Id<BuriedLine> id) {
  ObjectForm<BuriedLine> line(form, document, id);
  line.text("buried-name", formTr("Name"), &BuriedLine::name);
  line.text("buried-kind", formTr("Kind"), &BuriedLine::kind);
  line.length("buried-width", formTr("Dig by hand"), &BuriedLine::handDigWidth,
              {Length(), Length::metres(5)});
  line.text("buried-ticket", formTr("Ticket"), &BuriedLine::ticket);
  line.field(
      "buried-expiry", formTr("Runs out"),
      [](const BuriedLine& l) {
        return l.expiry ? QString::fromStdString(formatDate(*l.expiry)) : QString();
      },
      [](BuriedLine& l, const QString& typed) { return readExpiry(typed, l.expiry); });
  form.addNote(
      formTr("A drawn line is no locate. Have buried lines marked before anyone digs (811 in "
             "the United States) and follow the marks and the state's rule."));
}

void fillForm(FieldForm& form, Document& document, Id<Photo> id) {
  ObjectForm<Photo> photo(form, document, id);
  photo.text("photo-name", formTr("Name"), &Photo::name);
  photo.fact("photo-width", formTr("Width"), [&document](const Photo& p) {
    return lengthText(Length::metres(p.widthPixels * p.metresPerPixel),
                      document.yard().settings.units);
  });
  photo.field(
      "photo-turn", formTr("Turn"), [](const Photo& p) { return degreesText(p.turn); },
      [](Photo& p, const QString& typed) { return readDegrees(typed, p.turn); });
  addFade(form, document, id);
  photo.tick("photo-locked", formTr("Locked in place"), &Photo::locked);
}

}  // namespace tussock

// SPDX-License-Identifier: MIT
// Draws the base picture of the example yard from its site file, so that the two agree to the
// pixel. Usage: draw_aerial site.geojson aerial.png. Built by hand, with Qt 6 Gui:
//   g++ -std=c++20 -O2 -fPIC draw_aerial.cpp -o draw_aerial $(pkg-config --cflags --libs Qt6Gui)
#include <cmath>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPainter>
#include <QPainterPath>
#include <random>

namespace {

// The picture: 3 cm a pixel, its top left corner 3 m west of the yard's origin and 27 m north.
constexpr int kWidth = 1600, kHeight = 1100;
constexpr double kMetresPerPixel = 0.03, kLeft = -3.0, kTop = 27.0;
constexpr double kLatitude = 38.4, kLongitude = -86.9;

double radians(double degrees) {
  return degrees * M_PI / 180.0;
}

// Pixels from site metres.
QPointF at(double x, double y) {
  return {(x - kLeft) / kMetresPerPixel, (kTop - y) / kMetresPerPixel};
}
double px(double metres) {
  return metres / kMetresPerPixel;
}

QPointF fromDegrees(const QJsonArray& position) {
  // Tangent plane of the WGS 84 ellipsoid at the yard's position.
  constexpr double a = 6378137.0, f = 1.0 / 298.257223563, e2 = f * (2.0 - f);
  const double s = std::sin(radians(kLatitude));
  const double east = a / std::sqrt(1.0 - e2 * s * s) * std::cos(radians(kLatitude));
  const double north = a * (1.0 - e2) / std::pow(1.0 - e2 * s * s, 1.5);
  return at(radians(position[0].toDouble() - kLongitude) * east,
            radians(position[1].toDouble() - kLatitude) * north);
}

QPolygonF pointsOf(const QJsonArray& positions) {
  QPolygonF result;
  for (const auto& position : positions) result << fromDegrees(position.toArray());
  return result;
}

struct Feature {
  QString kind, name;
  QJsonObject properties;
  QPolygonF points;  // outer ring, line or single point
  QPainterPath path() const {
    QPainterPath p;
    p.addPolygon(points);
    p.closeSubpath();
    return p;
  }
};

QList<Feature> read(const QString& file) {
  QFile in(file);
  if (!in.open(QIODevice::ReadOnly)) qFatal("cannot read the site file");
  QList<Feature> result;
  const auto features = QJsonDocument::fromJson(in.readAll())["features"].toArray();
  for (const QJsonValue each : features) {
    const QJsonObject properties = each["properties"].toObject();
    const QJsonObject geometry = each["geometry"].toObject();
    QJsonArray positions = geometry["coordinates"].toArray();
    if (geometry["type"] == "Polygon") positions = positions[0].toArray();
    if (geometry["type"] == "Point") positions = QJsonArray{positions};
    result << Feature{properties["kind"].toString(), properties["name"].toString(), properties,
                      pointsOf(positions)};
  }
  return result;
}

// Smooth noise in -1 to 1: value noise of several octaves, the same on every machine.
double hash(int x, int y) {
  quint32 h = quint32(x) * 374761393u + quint32(y) * 668265263u;
  h = (h ^ (h >> 13)) * 1274126177u;
  return double((h ^ (h >> 16)) & 0xffff) / 32767.5 - 1.0;
}
double noise(double x, double y) {
  const int i = int(std::floor(x)), j = int(std::floor(y));
  const double u = x - i, v = y - j, a = u * u * (3 - 2 * u), b = v * v * (3 - 2 * v);
  return (hash(i, j) * (1 - a) + hash(i + 1, j) * a) * (1 - b) +
         (hash(i, j + 1) * (1 - a) + hash(i + 1, j + 1) * a) * b;
}
double clouds(double x, double y) {
  return 0.5 * noise(x, y) + 0.3 * noise(2.1 * x, 2.1 * y) + 0.2 * noise(4.3 * x, 4.3 * y);
}

QColor shade(QColor colour, double by) {
  auto c = [by](int value) { return std::clamp(int(value * (1.0 + by)), 0, 255); };
  return QColor(c(colour.red()), c(colour.green()), c(colour.blue()), colour.alpha());
}

// A colour with broad and fine unevenness, as a brush of picture size.
QBrush textured(QColor colour, double broad, double fine, double metres) {
  QImage image(kWidth, kHeight, QImage::Format_RGB32);
  for (int y = 0; y < kHeight; ++y)
    for (int x = 0; x < kWidth; ++x) {
      const double k = clouds(x / px(metres), y / px(metres)) * broad + hash(x / 2, y / 2) * fine;
      image.setPixelColor(x, y, shade(colour, k));
    }
  return QBrush(image);
}

QBrush lawn() {
  QImage image(kWidth, kHeight, QImage::Format_RGB32);
  for (int y = 0; y < kHeight; ++y)
    for (int x = 0; x < kWidth; ++x) {
      const double mown = std::sin((x * 0.92 + y * 0.4) / px(0.55) * M_PI) > 0 ? 0.018 : -0.018;
      const double worn = clouds(x / px(4.5) + 9, y / px(4.5));
      const double dry = std::clamp(1.6 * (worn - 0.1), 0.0, 0.45);
      const QColor base(int(110 + 46 * dry), int(126 + 10 * dry), int(86 + 12 * dry));
      const double k = mown + clouds(x / px(1.3), y / px(1.3)) * 0.10 + hash(x / 2, y / 2) * 0.05;
      image.setPixelColor(x, y, shade(base, k));
    }
  return QBrush(image);
}

// The light comes from the south-east at 45 degrees: a thing of height h darkens the ground to
// its north-west.
QPointF shadowStep(double height) {
  return {-px(0.5 * height), -px(0.5 * height)};
}

void castShadow(QPainter& painter, const QPolygonF& foot, double height) {
  QPainterPath shadow;
  shadow.setFillRule(Qt::WindingFill);
  const QPointF step = shadowStep(height);
  for (int i = 0; i < foot.size(); ++i) {
    QPolygonF quad{foot[i], foot[(i + 1) % foot.size()], foot[(i + 1) % foot.size()] + step,
                   foot[i] + step};
    QPainterPath piece;
    piece.addPolygon(quad);
    shadow = shadow.united(piece);
  }
  painter.fillPath(shadow, QColor(28, 34, 40, 105));
}

void drawStreet(QPainter& p) {
  p.fillRect(QRectF(at(-3, -3.4), at(45, -6)), textured({104, 103, 100}, 0.06, 0.05, 2.0));
  p.fillRect(QRectF(at(-3, -3.25), at(45, -3.4)), QColor(186, 182, 172));  // kerb
  p.fillRect(QRectF(at(-3, -3.4), at(45, -3.52)), QColor(80, 79, 77, 120));
  p.setPen(QPen(QColor(226, 196, 96, 200), px(0.11), Qt::CustomDashLine));
  QPen dashes = p.pen();
  dashes.setDashPattern({22, 18});
  p.setPen(dashes);
  p.drawLine(at(-3, -5.6), at(45, -5.6));
  p.setPen(Qt::NoPen);
}

void drawJoints(QPainter& p, const Feature& paving, double step, QColor colour) {
  p.save();
  p.setClipPath(paving.path());
  p.setPen(QPen(colour, 1.0));
  const QRectF box = paving.points.boundingRect();
  if (box.width() > box.height())
    for (double x = box.left(); x < box.right(); x += px(step))
      p.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
  else
    for (double y = box.top(); y < box.bottom(); y += px(step))
      p.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
  p.restore();
}

void drawTerrace(QPainter& p, const Feature& paving) {
  p.save();
  p.setClipPath(paving.path());
  const QRectF box = paving.points.boundingRect();
  for (int j = 0; j * px(0.3) < box.height(); ++j)
    for (int i = -1; i * px(0.6) < box.width(); ++i) {
      const QRectF slab(box.left() + (i + (j % 2) * 0.5) * px(0.6), box.top() + j * px(0.3),
                        px(0.6), px(0.3));
      p.fillRect(slab.adjusted(0.6, 0.6, -0.6, -0.6),
                 shade(QColor(184, 164, 140), 0.09 * hash(i + 40, j)));
    }
  p.restore();
}

void drawPaving(QPainter& p, const Feature& paving) {
  const bool asphalt = paving.name == "Parking";
  p.fillPath(paving.path(), asphalt ? textured({112, 111, 108}, 0.07, 0.05, 1.6)
                                    : textured({198, 193, 182}, 0.05, 0.03, 0.9));
  if (paving.name == "Reading terrace") return drawTerrace(p, paving);
  if (!asphalt) {
    drawJoints(p, paving, 1.5, QColor(150, 146, 136, 150));
    p.setPen(QPen(QColor(120, 118, 104, 110), 1.2));
    p.drawPath(paving.path());
    p.setPen(Qt::NoPen);
  }
}

void drawCar(QPainter& p, double x, double y, QColor colour, double turn) {
  p.save();
  p.translate(at(x, y));
  p.rotate(turn);
  const QRectF body(-px(2.2), -px(0.9), px(4.4), px(1.8));
  p.setBrush(QColor(20, 24, 28, 110));
  const double side = std::abs(turn) > 90 ? 1.0 : -1.0;  // the shadow falls to the north-west
  p.drawRoundedRect(body.translated(side * px(0.25), side * px(0.25)), px(0.5), px(0.5));
  QLinearGradient sheen(body.topLeft(), body.bottomLeft());
  sheen.setColorAt(0, shade(colour, -0.15));
  sheen.setColorAt(0.5, shade(colour, 0.15));
  sheen.setColorAt(1, shade(colour, -0.1));
  p.setBrush(sheen);
  p.drawRoundedRect(body, px(0.55), px(0.5));
  p.setBrush(QColor(38, 46, 54));
  p.drawRoundedRect(QRectF(-px(1.5), -px(0.74), px(2.7), px(1.48)), px(0.3), px(0.3));
  p.setBrush(shade(colour, 0.05));
  p.drawRoundedRect(QRectF(-px(1.0), -px(0.68), px(1.6), px(1.36)), px(0.2), px(0.2));
  p.restore();
}

void drawParking(QPainter& p) {
  p.setPen(QPen(QColor(228, 226, 216, 210), px(0.1)));
  for (double y = 7.0; y <= 23.0; y += 2.6) {
    p.drawLine(at(36.2, y), at(41.2, y));
  }
  p.setPen(Qt::NoPen);
  drawCar(p, 38.7, 8.3, {138, 66, 56}, 180);
  drawCar(p, 38.8, 13.5, {206, 208, 206}, 0);
  drawCar(p, 38.6, 18.7, {62, 84, 110}, 181);
  drawCar(p, 6.5, -4.5, {92, 104, 92}, 0.6);
}

void drawBed(QPainter& p, const Feature& bed) {
  p.fillPath(bed.path(), textured({129, 100, 72}, 0.10, 0.14, 0.7));
  p.setPen(QPen(QColor(70, 62, 44, 170), 2.2));
  p.drawPath(bed.path());
  p.setPen(Qt::NoPen);
}

// A hip roof over the box of its footprint, ridge from west to east.
void drawHip(QPainter& p, const Feature& building) {
  QRectF box = building.points.boundingRect().adjusted(-px(0.4), -px(0.4), px(0.4), px(0.4));
  const double half = box.height() / 2.0;
  const QPointF west(box.left() + half, box.center().y()),
      east(box.right() - half, box.center().y());
  struct Plane {
    QPolygonF points;
    double light;
    bool across;
  };
  const Plane planes[] = {{{box.topLeft(), box.topRight(), east, west}, -0.20, true},
                          {{box.bottomLeft(), box.bottomRight(), east, west}, 0.10, true},
                          {{box.topLeft(), box.bottomLeft(), west}, -0.10, false},
                          {{box.topRight(), box.bottomRight(), east}, 0.02, false}};
  for (const Plane& plane : planes) {
    QPainterPath path;
    path.addPolygon(plane.points);
    path.closeSubpath();
    p.fillPath(path, textured(shade(QColor(122, 112, 106), plane.light), 0.05, 0.05, 0.8));
    p.save();
    p.setClipPath(path);
    p.setPen(QPen(QColor(40, 36, 34, 42), 1.0));
    for (double d = 0; d < half * 2; d += px(0.24))  // courses of shingles
      if (plane.across) {
        p.drawLine(QPointF(box.left(), box.top() + d), QPointF(box.right(), box.top() + d));
      } else {
        p.drawLine(QPointF(box.left() + d, box.top()), QPointF(box.left() + d, box.bottom()));
        p.drawLine(QPointF(box.right() - d, box.top()), QPointF(box.right() - d, box.bottom()));
      }
    p.restore();
  }
  p.setPen(QPen(QColor(176, 168, 160), px(0.14)));
  p.drawLine(west, east);
  for (const auto& [corner, end] :
       {std::pair(box.topLeft(), west), std::pair(box.bottomLeft(), west),
        std::pair(box.topRight(), east), std::pair(box.bottomRight(), east)})
    p.drawLine(corner, end);
  p.setPen(QPen(QColor(206, 200, 190), px(0.09)));
  p.drawRect(box);
  p.setPen(Qt::NoPen);
}

void drawFlat(QPainter& p, const Feature& building) {
  p.fillPath(building.path(), textured({168, 166, 160}, 0.04, 0.04, 0.7));
  p.setPen(QPen(QColor(216, 212, 204), px(0.12)));
  p.drawPath(building.path());
  p.setPen(Qt::NoPen);
}

QPainterPath crownPath(QPointF centre, double radius, int seed, double rough) {
  QPainterPath path;
  constexpr int kSteps = 90;
  for (int i = 0; i <= kSteps; ++i) {
    const double turn = 2 * M_PI * (i % kSteps) / kSteps;
    const double r = radius * (1.0 + rough * noise(5 * std::cos(turn) + seed * 7.3,
                                                   5 * std::sin(turn) + seed * 3.1));
    const QPointF q = centre + QPointF(std::cos(turn), std::sin(turn)) * r;
    i == 0 ? path.moveTo(q) : path.lineTo(q);
  }
  return path;
}

// Many small clumps of leaves, darker to the north-west and below.
void drawCrown(QPainter& p, QPointF centre, double radius, QColor colour, int seed) {
  std::mt19937 random(static_cast<unsigned>(seed) * 977u + 5u);
  auto unit = [&] { return double(random()) / 4294967296.0; };
  p.fillPath(crownPath(centre, radius * 0.97, seed, 0.10), shade(colour, -0.42));
  const int clumps = int(radius * radius / 28);
  for (int i = 0; i < clumps; ++i) {
    const double level = double(i) / clumps;  // painted from below upwards
    const double r = radius * (0.98 - 0.45 * level * level) * std::sqrt(unit());
    const double turn = 2 * M_PI * unit();
    const QPointF q = centre + QPointF(std::cos(turn), std::sin(turn)) * r;
    const double facing = (q.x() - centre.x() + q.y() - centre.y()) / radius / 1.414;
    const double light = -0.30 + 0.38 * level + 0.16 * facing + 0.10 * (unit() - 0.5);
    QColor leaf = shade(colour, light);
    leaf.setAlpha(190);
    p.setBrush(leaf);
    const double size = px(0.10 + 0.17 * unit());
    p.drawEllipse(q, size, size * (0.7 + 0.3 * unit()));
  }
}

void drawTree(QPainter& p, const Feature& tree, int seed) {
  static const QColor kGreens[] = {
      {104, 126, 74}, {90, 114, 70}, {118, 132, 82}, {82, 106, 64}, {136, 144, 88}};
  drawCrown(p, tree.points[0], px(tree.properties["crown_radius_m"].toDouble()), kGreens[seed % 5],
            seed);
}

void drawSmallThings(QPainter& p) {
  p.setBrush(QColor(110, 82, 56));  // benches on the terrace and the walk, a bicycle stand
  for (const auto& [x, y, turn] :
       {std::tuple(7.2, 16.8, 0.0), std::tuple(9.1, 15.4, 80.0), std::tuple(24.9, 12.4, 0.0)}) {
    p.save();
    p.translate(at(x, y));
    p.rotate(turn);
    p.fillRect(QRectF(-px(0.8) - 4, -px(0.25) - 4, px(1.6), px(0.5)), QColor(20, 24, 28, 90));
    for (int i = 0; i < 4; ++i)
      p.drawRect(QRectF(-px(0.8), -px(0.25) + i * px(0.125), px(1.6), px(0.1)));
    p.restore();
  }
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) qFatal("usage: draw_aerial site.geojson aerial.png");
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QGuiApplication app(argc, argv);
  const QList<Feature> features = read(QString::fromLocal8Bit(argv[1]));
  auto each = [&](const char* kind, auto draw) {
    int i = 0;
    for (const Feature& feature : features)
      if (feature.kind == QLatin1String(kind)) draw(feature, i++);
  };
  QImage image(kWidth, kHeight, QImage::Format_RGB32);
  QPainter p(&image);
  p.setRenderHint(QPainter::Antialiasing);
  p.setPen(Qt::NoPen);
  p.fillRect(image.rect(), lawn());
  drawStreet(p);
  each("paving", [&](const Feature& f, int) { drawPaving(p, f); });
  drawParking(p);
  each("bed", [&](const Feature& f, int) { drawBed(p, f); });
  each("building", [&](const Feature& f, int) {
    castShadow(p, f.points, f.properties["roof"] == "flat" ? 3.0 : 3.8);
  });
  each("wall", [&](const Feature& f, int) {
    const QPointF side(px(0.1), 0);
    castShadow(p, {f.points[0] - side, f.points[1] - side, f.points[1] + side, f.points[0] + side},
               f.properties["height_m"].toDouble());
    p.fillRect(QRectF(f.points[1] - side, f.points[0] + side), QColor(158, 92, 72));
    p.setPen(QPen(QColor(186, 122, 100), 2.0));
    p.drawLine(f.points[1], f.points[0]);
    p.setPen(Qt::NoPen);
  });
  each("building", [&](const Feature& f, int) {
    f.properties["roof"] == "flat" ? drawFlat(p, f) : drawHip(p, f);
  });
  drawSmallThings(p);
  each("tree", [&](const Feature& f, int i) {
    const double r = f.properties["crown_radius_m"].toDouble();
    const double middle = f.properties["height_m"].toDouble() * 0.5;
    p.fillPath(crownPath(f.points[0] + shadowStep(middle), px(r) * 1.02, i, 0.12),
               QColor(28, 34, 40, 100));
  });
  each("tree", [&](const Feature& f, int i) { drawTree(p, f, i); });
  p.end();
  for (int y = 0; y < kHeight; ++y)  // 64 steps of each colour are enough to the eye, and pack well
    for (int x = 0; x < kWidth; ++x) {
      const QRgb c = image.pixel(x, y);
      image.setPixel(x, y, qRgb(qRed(c) / 4 * 4, qGreen(c) / 4 * 4, qBlue(c) / 4 * 4));
    }
  return image.save(QString::fromLocal8Bit(argv[2])) ? 0 : 1;
}

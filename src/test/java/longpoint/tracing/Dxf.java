package longpoint.tracing;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A DXF file put together by hand, value by value. */
final class Dxf {
  private final StringBuilder out = new StringBuilder();

  static Dxf drawing() {
    return new Dxf();
  }

  Dxf header(String variable, int value) {
    return section("HEADER").tags(9, variable, 70, value).end();
  }

  Dxf section(String name) {
    return tags(0, "SECTION", 2, name);
  }

  Dxf end() {
    return tags(0, "ENDSEC");
  }

  /** Codes and values in turn. */
  Dxf tags(Object... all) {
    for (int i = 0; i < all.length; i += 2) {
      out.append(String.format(Locale.ROOT, "%3d\n%s\n", (Integer) all[i], all[i + 1]));
    }
    return this;
  }

  Dxf line(String layer, double x1, double y1, double x2, double y2) {
    return tags(0, "LINE", 8, layer, 10, x1, 20, y1, 30, 0.0, 11, x2, 21, y2, 31, 0.0);
  }

  /** A closed polyline of x, y and bulge in turn. */
  Dxf closed(String layer, double... xyBulge) {
    tags(0, "LWPOLYLINE", 8, layer, 90, xyBulge.length / 3, 70, 1);
    for (int i = 0; i < xyBulge.length; i += 3) {
      tags(10, xyBulge[i], 20, xyBulge[i + 1], 42, xyBulge[i + 2]);
    }
    return this;
  }

  byte[] bytes() {
    return (out + "  0\nEOF\n").getBytes(StandardCharsets.UTF_8);
  }

  byte[] cutShort() {
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}

package longpoint.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.stop.CalledOff;

/** A run of DXF tags: a group code on one line, its value on the next. */
final class DxfTags {
  /** Readers get a coordinate back to a ten-thousandth of a millionth of the plan's unit. */
  private static final int DECIMALS = 10;

  /** Characters encoded at a time. */
  private static final int PIECE = 1 << 16;

  private final StringBuilder out = new StringBuilder();

  DxfTags tag(int code, String value) {
    out.append(code).append('\n').append(value).append('\n');
    return this;
  }

  DxfTags tag(int code, int value) {
    return tag(code, Integer.toString(value));
  }

  DxfTags number(int code, double value) {
    String plain = Figures.plain(value, DECIMALS);
    return tag(code, plain.indexOf('.') < 0 ? plain + ".0" : plain);
  }

  DxfTags handle(int code, int handle) {
    return tag(code, hex(handle));
  }

  /** A point on the ground: x, y and a height of nought under codes ten apart. */
  DxfTags point(int code, Point p) {
    return flat(code, p).number(code + 20, 0);
  }

  /** x and y only. */
  DxfTags flat(int code, Point p) {
    return number(code, p.x()).number(code + 10, p.y());
  }

  /** A place in space. */
  DxfTags place(int code, Point3 p) {
    return vector(code, p.x(), p.y(), p.z());
  }

  /** A direction or corner in space. */
  DxfTags vector(int code, double x, double y, double z) {
    return number(code, x).number(code + 10, y).number(code + 20, z);
  }

  DxfTags all(DxfTags other) {
    out.append(other.out);
    return this;
  }

  /** Piece by piece, since a drawing of a large plan is some megabytes. */
  void writeTo(OutputStream to) throws IOException {
    for (int from = 0; from < out.length(); from += PIECE) {
      CalledOff.check();
      String piece = out.substring(from, Math.min(out.length(), from + PIECE));
      to.write(piece.getBytes(StandardCharsets.US_ASCII));
    }
  }

  static String hex(int handle) {
    return Integer.toHexString(handle).toUpperCase(Locale.ROOT);
  }

  @Override
  public String toString() {
    return out.toString();
  }
}

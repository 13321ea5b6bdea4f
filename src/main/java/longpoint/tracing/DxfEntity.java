package longpoint.tracing;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.wording.Phrase;

/**
 * An entity as it stands in the file.
 *
 * @param line of its name in the file, from 1
 * @param tags of the codes that matter here, in order
 * @param parts vertices of a polyline
 */
record DxfEntity(String type, int line, List<DxfTag> tags, List<DxfEntity> parts) {
  /** How far an extrusion may lean and still count as straight up or down. */
  private static final double LEAN = 1e-6;

  Optional<DxfTag> tag(int code) {
    return tags.stream().filter(t -> t.code() == code).findFirst();
  }

  boolean has(int code) {
    return tag(code).isPresent();
  }

  String text(int code) {
    return tag(code).map(DxfTag::value).orElse("");
  }

  double number(int code, double otherwise) throws TracingException {
    Optional<DxfTag> tag = tag(code);
    return tag.isEmpty() ? otherwise : tag.get().number();
  }

  double number(int code) throws TracingException {
    Optional<DxfTag> tag = tag(code);
    if (tag.isEmpty()) {
      throw TracingException.at(line, Phrase.of("tracing.noValue", type, code));
    }
    return tag.get().number();
  }

  int whole(int code, int otherwise) throws TracingException {
    return (int) number(code, otherwise);
  }

  Point point(int code) throws TracingException {
    return new Point(number(code), number(code + 10));
  }

  /** Whether it is to be seen in the model: not on a sheet's own paper, not switched off. */
  boolean inModel() throws TracingException {
    return whole(67, 0) == 0 && whole(60, 0) == 0;
  }

  /** Where its own coordinates lie on the plan; empty if it is drawn on a leaning plane. */
  Optional<Inserting> ownAxes() throws TracingException {
    double up = number(230, 1);
    double lean = Math.hypot(number(210, 0), number(220, 0));
    if (up == 0 || lean > LEAN * Math.abs(up)) {
      return Optional.empty();
    }
    return Optional.of(up > 0 ? Inserting.NONE : Inserting.FROM_BEHIND);
  }
}

package longpoint.planfile;

import static longpoint.planfile.PlanWriter.field;
import static longpoint.planfile.PlanWriter.line;
import static longpoint.planfile.PlanWriter.list;
import static longpoint.planfile.PlanWriter.number;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.PlanDimension;

/** Writes notes, dimensions and the picture beneath; a plan without them has no such keys. */
final class MarkupWriter {
  /** Characters of a picture in one line of the file, a multiple of four. */
  private static final int PICTURE_LINE = 4000;

  private MarkupWriter() {}

  static List<String> fields(Markup markup) {
    List<String> fields = new ArrayList<>();
    if (!markup.notes().isEmpty()) {
      fields.add(
          field("notes", list(markup.notes().stream().map(MarkupWriter::note).toList(), "  ")));
    }
    if (!markup.dimensions().isEmpty()) {
      fields.add(
          field(
              "dimensions",
              list(markup.dimensions().stream().map(MarkupWriter::dimension).toList(), "  ")));
    }
    markup.backdrop().ifPresent(u -> fields.add(field("backdrop", backdrop(u))));
    return fields;
  }

  private static String note(Note note) {
    List<String> known = new ArrayList<>();
    known.add(field("id", JsonText.quote(note.id())));
    known.add(field("at", point(note.at())));
    note.pointsAt().ifPresent(p -> known.add(field("pointsAt", point(p))));
    known.add(field("text", JsonText.quote(note.text())));
    return line(PlanWriter.fields(note.extras(), known.toArray(String[]::new)));
  }

  private static String dimension(PlanDimension d) {
    return line(
        PlanWriter.fields(
            d.extras(),
            field("id", JsonText.quote(d.id())),
            field("from", end(d.from())),
            field("to", end(d.to())),
            field("along", JsonText.quote(d.along().key())),
            field("offset", number(d.offset()))));
  }

  static String end(PlanDimension.End end) {
    if (end instanceof PlanDimension.Corner c) {
      return line(
          List.of(
              field("part", JsonText.quote(c.part())),
              field("corner", Integer.toString(c.corner()))));
    }
    return point(((PlanDimension.Place) end).at());
  }

  private static String backdrop(Backdrop u) {
    return PlanWriter.block(
        PlanWriter.fields(
            u.extras(),
            field("name", JsonText.quote(u.name())),
            field("at", point(u.at())),
            field("scale", number(u.scale())),
            field("turned", number(u.degrees())),
            field("strength", number(u.strength())),
            field("state", JsonText.quote(u.state().key())),
            field("type", JsonText.quote(u.image().type().key())),
            field("width", Integer.toString(u.image().width())),
            field("height", Integer.toString(u.image().height())),
            field("data", list(lines(u.image().base64()), "    "))),
        "  ");
  }

  private static List<String> lines(String base64) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < base64.length(); i += PICTURE_LINE) {
      lines.add(JsonText.quote(base64.substring(i, Math.min(base64.length(), i + PICTURE_LINE))));
    }
    return lines;
  }

  private static String point(Point p) {
    return "[" + number(p.x()) + ", " + number(p.y()) + "]";
  }
}

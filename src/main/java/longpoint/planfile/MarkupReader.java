package longpoint.planfile;

import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;
import longpoint.plan.EncodedImage;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.PlanDimension;
import longpoint.wording.Phrase;

/** Reads notes, dimensions and the picture beneath. A picture is not unpacked here. */
final class MarkupReader {
  /** Far more than fit on a sheet; enough to stop a file made to exhaust the program. */
  private static final int MOST_NOTES = 2000;

  private static final int MOST_DIMENSIONS = 5000;
  private static final int LONGEST_NOTE = 2000;

  /** Strength of a picture that says nothing of its own. */
  static final double HALF = 0.5;

  private final Notes notes;
  private final Set<String> ids = new HashSet<>();

  MarkupReader(Notes notes) {
    this.notes = notes;
  }

  Markup read(Fields plan) throws PlanFileException {
    List<Note> written = new ArrayList<>();
    Optional<JsonValue> noteList = plan.take("notes");
    if (noteList.isPresent()) {
      for (JsonValue note : PlanReader.atMost(MOST_NOTES, noteList.get(), "notes")) {
        written.add(note(note));
      }
    }
    List<PlanDimension> dimensions = new ArrayList<>();
    Optional<JsonValue> dimensionList = plan.take("dimensions");
    if (dimensionList.isPresent()) {
      for (JsonValue d : PlanReader.atMost(MOST_DIMENSIONS, dimensionList.get(), "dimensions")) {
        dimensions.add(dimension(d));
      }
    }
    Optional<JsonValue> backdrop = plan.take("backdrop");
    return new Markup(
        written,
        dimensions,
        backdrop.isEmpty() ? Optional.empty() : Optional.of(backdrop(backdrop.get())));
  }

  /** An id of its own, whatever the file says: what has the same one could not be picked. */
  private String id(Fields f, String stem) throws PlanFileException {
    String wanted = f.text("id", stem);
    String id = wanted.isBlank() ? stem : wanted;
    for (int n = 2; !ids.add(id); n++) {
      id = (wanted.isBlank() ? stem : wanted) + "-" + n;
    }
    return id;
  }

  private Note note(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    String id = id(f, "note");
    JsonValue text = f.need("text");
    if (Fields.text(text).length() > LONGEST_NOTE) {
      throw PlanFileException.at(text, Phrase.of("planfile.note.long", LONGEST_NOTE));
    }
    return new Note(
        id,
        Fields.point(f.need("at")),
        f.optionalPoint("pointsAt"),
        Fields.text(text),
        f.rest(notes, "plan"));
  }

  private PlanDimension dimension(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    String id = id(f, "dimension");
    return new PlanDimension(
        id,
        end(f.need("from")),
        end(f.need("to")),
        f.choice(
            "along",
            PlanDimension.Along.STRAIGHT,
            PlanDimension.Along.values(),
            PlanDimension.Along::key),
        f.number("offset", 0),
        f.rest(notes, "plan"));
  }

  private PlanDimension.End end(JsonValue value) throws PlanFileException {
    if (!(value.value() instanceof Map)) {
      return new PlanDimension.Place(Fields.point(value));
    }
    Fields f = new Fields(value);
    String part = f.text("part");
    JsonValue corner = f.need("corner");
    f.rest(notes, "plan");
    return new PlanDimension.Corner(part, whole(corner, 0, Integer.MAX_VALUE));
  }

  private Backdrop backdrop(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    String name = f.text("name", "");
    Point at = f.optionalPoint("at").orElse(new Point(0, 0));
    double scale = above(f.need("scale"), Double.MAX_VALUE);
    Optional<JsonValue> strength = f.take("strength");
    return new Backdrop(
        name,
        image(f),
        at,
        scale,
        f.number("turned", 0),
        strength.isEmpty() ? HALF : above(strength.get(), 1),
        f.choice("state", Backdrop.State.LOOSE, Backdrop.State.values(), Backdrop.State::key),
        f.rest(notes, "plan"));
  }

  static double above(JsonValue value, double most) throws PlanFileException {
    double number = Fields.number(value);
    if (!(number > 0 && number <= most)) {
      throw PlanFileException.at(value, Phrase.of(most == 1 ? "planfile.share" : "planfile.above"));
    }
    return number;
  }

  static int whole(JsonValue value, int least, int most) throws PlanFileException {
    double number = Fields.number(value);
    if (number != Math.rint(number) || number < least || number > most) {
      throw PlanFileException.at(value, Phrase.of("planfile.whole", least, most));
    }
    return (int) number;
  }

  private static EncodedImage image(Fields f) throws PlanFileException {
    EncodedImage.Type type =
        Fields.choice(f.need("type"), EncodedImage.Type.values(), EncodedImage.Type::key);
    int width = whole(f.need("width"), 1, EncodedImage.MOST_PIXELS);
    int height = whole(f.need("height"), 1, EncodedImage.MOST_PIXELS);
    JsonValue data = f.need("data");
    StringBuilder base64 = new StringBuilder();
    for (JsonValue line : Fields.list(data)) {
      base64.append(Fields.text(line));
    }
    try {
      byte[] bytes = Base64.getDecoder().decode(base64.toString());
      if (bytes.length > EncodedImage.MOST_BYTES) {
        throw PlanFileException.at(
            data, Phrase.of("planfile.picture.large", EncodedImage.MOST_BYTES / 1_000_000));
      }
      return new EncodedImage(type, width, height, bytes);
    } catch (IllegalArgumentException e) {
      throw PlanFileException.at(data, Phrase.of("planfile.picture.damaged"));
    }
  }
}

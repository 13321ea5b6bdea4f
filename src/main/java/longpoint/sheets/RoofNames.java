package longpoint.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofSurface;

/**
 * Parts, walls, planes and lines as the sheets call them: a part by its name, a wall by the way it
 * faces, a plane by its letter, a line by its planes. What is not in the plan keeps its id.
 */
public final class RoofNames {
  private final Plan plan;
  private final Words words;
  private final Map<String, String> letters;
  private final Map<String, RoofLine> lines = new HashMap<>();

  public RoofNames(Plan plan, RoofSurface surface) {
    this.plan = plan;
    this.words = Words.of(plan);
    letters = PlaneMarks.of(surface);
    surface.lines().forEach(l -> lines.put(l.id(), l));
  }

  /** What the sheets of the plan are worded in. */
  public Words words() {
    return words;
  }

  /** Letter of a plane. */
  public String plane(String id) {
    return letters.getOrDefault(id, id);
  }

  /** Letters of planes. */
  public String planes(List<String> ids) {
    return ids.stream().map(this::plane).collect(Collectors.joining(" "));
  }

  /** Kind of a roof line and the letters of its planes. */
  public String line(String id) {
    RoofLine line = lines.get(id);
    return line == null ? id : words.text("line.between", kind(line.kind()), planes(line.planes()));
  }

  /** A kind of roof line. */
  public String kind(LineKind kind) {
    return words.choice("line", kind);
  }

  /** A roof line by its planes, a wall by the way it faces, a run by its part. */
  public String place(String id) {
    if (lines.containsKey(id)) {
      return line(id);
    }
    return id.indexOf('/') < 0 ? run(id) : wall(id);
  }

  /** A part by its name, or its id if it has none. */
  static String part(Part part) {
    return part.name().isBlank() ? part.id() : part.name().strip();
  }

  String part(String id) {
    return plan.part(id).map(RoofNames::part).orElse(id);
  }

  /** A run by its part, with its number where a part has several. */
  public String run(String id) {
    int dot = id.lastIndexOf('.');
    if (dot < 0 || plan.part(id).isPresent()) {
      return part(id);
    }
    String number = id.substring(dot + 1);
    return plan.part(id.substring(0, dot)).isPresent() && number.matches("[0-9]+")
        ? words.text("run.leg", part(id.substring(0, dot)), Integer.parseInt(number) + 1)
        : id;
  }

  /** A wall by the way it faces: east wall of Garden wing. */
  public String wall(String side) {
    int slash = side.lastIndexOf('/');
    if (slash < 0 || plan.part(side.substring(0, slash)).isEmpty()) {
      return side;
    }
    Part part = plan.part(side.substring(0, slash)).orElseThrow();
    int index = Integer.parseInt(side.substring(slash + 1));
    return PlaceName.of(plan, part, index).label(words.language());
  }
}

package longpoint.packet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.sheets.PlaneMarks;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofSurface;

/** Planes and lines as the sheets call them: a plane by its letter, a line by its planes. */
final class RoofNames {
  private final Map<String, String> letters;
  private final Map<String, RoofLine> lines = new HashMap<>();

  RoofNames(RoofSurface surface) {
    letters = PlaneMarks.of(surface);
    surface.lines().forEach(l -> lines.put(l.id(), l));
  }

  String plane(String id) {
    return letters.getOrDefault(id, id);
  }

  String planes(List<String> ids) {
    return ids.stream().map(this::plane).collect(Collectors.joining(" "));
  }

  /** A roof line by its planes; a run or a side as it is. */
  String place(String id) {
    return lines.containsKey(id) ? line(id) : id;
  }

  String line(String id) {
    RoofLine line = lines.get(id);
    return line == null ? id : line.kind().key() + " " + planes(line.planes());
  }
}

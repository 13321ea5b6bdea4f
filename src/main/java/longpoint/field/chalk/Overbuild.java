package longpoint.field.chalk;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Segment;

/**
 * What an overlay draws on the deck it stands on. Lines in plan, plumb under the top of that deck.
 *
 * @param plane id of the plane it stands on
 * @param name what people call the part above
 * @param centre under its ridge, from the eave up
 * @param setLines where chord ends land
 * @param bearings of its trusses, from the eave up
 * @param sheetLines where its own sheets end
 * @param thickness of its trusses
 */
public record Overbuild(
    String plane,
    String name,
    Segment centre,
    List<Segment> setLines,
    List<Segment> bearings,
    List<Segment> sheetLines,
    double thickness) {
  public Overbuild {
    Objects.requireNonNull(plane);
    Objects.requireNonNull(name);
    Objects.requireNonNull(centre);
    setLines = List.copyOf(setLines);
    bearings = List.copyOf(bearings);
    sheetLines = List.copyOf(sheetLines);
  }
}

package longpoint.field.chalk;

import java.util.List;
import java.util.Objects;

/**
 * The lines of one plane.
 *
 * @param plane id of the roof plane
 * @param datum the corner everything is taped from
 * @param lines in the order they are snapped
 * @param square checks of whole layouts: of the courses, and of each valley set
 */
public record ChalkSheet(
    String plane, Datum datum, List<ChalkLine> lines, List<SquareCheck> square) {
  public ChalkSheet {
    Objects.requireNonNull(plane);
    Objects.requireNonNull(datum);
    lines = List.copyOf(lines);
    square = List.copyOf(square);
  }

  /**
   * What a line of this sheet is called in drawings and lists.
   *
   * @param number from 1, in the order the lines are snapped
   */
  public String lineId(int number) {
    return plane + "#" + number;
  }

  /** The lines of one kind, in order. */
  public List<ChalkLine> lines(ChalkLine.Kind kind) {
    return lines.stream().filter(l -> l.kind() == kind).toList();
  }

  /**
   * Running dimensions up the slope for lines of one kind: the tape stays hooked on the fascia and
   * these are marked one after another. Only level lines have one.
   */
  public List<Double> running(ChalkLine.Kind kind) {
    return lines(kind).stream()
        .filter(l -> Math.abs(l.from().y() - l.to().y()) <= LEVEL * (1 + Math.abs(l.to().y())))
        .map(l -> l.from().y())
        .toList();
  }

  /** Ends that differ by less than rounding are at one height. */
  private static final double LEVEL = 1e-9;
}

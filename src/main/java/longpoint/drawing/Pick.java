package longpoint.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Point;

/**
 * What lies under a pointer: the nearest stroke or lettering within reach, else the topmost tint
 * the pointer stands in. Marks of equal distance: the one painted later, since it is the one seen.
 *
 * @param mark that was hit, in the coordinates of the drawing
 * @param subject id of the plan or roof element it shows, may be empty
 * @param distance from the pointer in units of the drawing; 0 for lettering and tints
 */
public record Pick(Mark mark, String subject, double distance) {
  /**
   * Looks under the pointer.
   *
   * @param reach how far off a stroke may be, in units of the drawing
   * @param unitsPerMm units of the drawing to a millimetre of paper, &gt; 0
   */
  public static Optional<Pick> at(
      List<Mark> marks, Point pointer, double reach, double unitsPerMm) {
    Strokes all = Strokes.of(marks, unitsPerMm);
    Stream<Pick> strokes =
        all.strokes().stream().map(s -> pick(s.mark(), s.segment().distance(pointer)));
    Stream<Pick> labels =
        all.labels().stream().filter(l -> l.box().contains(pointer)).map(l -> pick(l.mark(), 0));
    Optional<Pick> near =
        Stream.concat(strokes, labels)
            .filter(p -> p.distance() <= reach)
            .reduce((a, b) -> NEAREST.compare(b, a) <= 0 ? b : a);
    return near.or(
        () ->
            all.fills().stream()
                .filter(f -> f.region().contains(pointer))
                .map(f -> pick(f, 0))
                .reduce((a, b) -> b));
  }

  private static final Comparator<Pick> NEAREST = Comparator.comparingDouble(Pick::distance);

  private static Pick pick(Mark mark, double distance) {
    return new Pick(mark, mark.subject(), distance);
  }
}

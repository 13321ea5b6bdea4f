package longpoint.framing.truss;

import java.util.List;
import java.util.Objects;

/**
 * One truss to order and how many of it.
 *
 * @param mark letters of its kind and a number, unique in the plan
 * @param plies single trusses fastened side by side in each
 * @param quantity how many stand on the roof
 * @param profile its outline
 * @param span outside to outside of its bearings
 * @param heelLow plumb at the outside of its first bearing
 * @param heelHigh plumb at the outside of its last bearing
 * @param height over all
 * @param tailLow level length of the first tail
 * @param tailHigh level length of the last tail
 * @param topChords lengths of the top edge, corner to corner
 * @param bottomChords lengths of the bottom edge
 * @param weight of all plies, an estimate from the lumber drawn here; the supplier's figure rules
 * @param shape chords and webs as an aid to the eye; not engineered
 */
public record TrussMark(
    String mark,
    TrussKind kind,
    int plies,
    int quantity,
    Profile profile,
    double span,
    double heelLow,
    double heelHigh,
    double height,
    double tailLow,
    double tailHigh,
    List<Double> topChords,
    List<Double> bottomChords,
    double weight,
    TrussShape shape) {
  public TrussMark {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(shape);
    topChords = List.copyOf(topChords);
    bottomChords = List.copyOf(bottomChords);
  }

  static TrussMark of(
      String mark,
      TrussKind kind,
      int plies,
      int quantity,
      Profile p,
      TrussShape shape,
      double weight) {
    return new TrussMark(
        mark,
        kind,
        plies,
        quantity,
        p,
        p.span(),
        p.heelLow(),
        p.heelHigh(),
        p.height(),
        p.tailLow(),
        p.tailHigh(),
        p.topChords(),
        p.bottomChords(),
        weight,
        shape);
  }
}

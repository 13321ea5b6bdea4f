package longpoint.plan;

import java.util.Optional;
import longpoint.geometry.Plane;
import longpoint.geometry.Segment;
import longpoint.units.Slope;

/**
 * One side of a part with every default filled in. Lengths in plan units.
 *
 * @param part id of the part
 * @param index number of the side in its part, from 0
 * @param wall outside face of the wall framing, with the part on its left
 * @param overhang wall face to plumb-cut tail, or to the outside of the rake, level
 * @param heel top of plate to top of framing at the wall face, plumb
 * @param plateHeight top of plate above the datum
 * @param fascia thickness of the fascia board beyond the tail
 * @param inLine whether its plane goes on where it comes into line with another; empty: by length
 */
public record Side(
    String part,
    int index,
    EdgeKind kind,
    Segment wall,
    Slope slope,
    double overhang,
    double heel,
    double plateHeight,
    double fascia,
    Optional<InLine> inLine) {

  /** Names this side everywhere: part id, a slash, and the side's number from 0. */
  public String id() {
    return id(part, index);
  }

  public static String id(String part, int index) {
    return part + "/" + index;
  }

  /** Top of framing of an eave: plate + heel at the wall face, rising inward by the slope. */
  public Plane framePlane() {
    return Plane.risingFrom(wall, plateHeight + heel, slope.ratio());
  }

  /** Wall face to the roof's edge, level: an eave ends at the outside of its fascia. */
  public double reach() {
    return switch (kind) {
      case EAVE -> overhang + fascia;
      case GABLE -> overhang;
      case ABUTMENT, OPEN -> 0;
    };
  }
}

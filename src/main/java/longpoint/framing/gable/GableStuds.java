package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;

/**
 * Studs of a framed gable wall.
 *
 * @param span of the gable, outside to outside
 * @param slope rise over run of both rakes
 * @param spacing of the studs, centre to centre, &gt; 0
 * @param heel top of plate to underside of the rafter at the outside wall face, plumb
 */
public record GableStuds(double span, double slope, double spacing, double heel) {
  public GableStuds {
    if (!(span > 0) || !(slope >= 0) || !(spacing > 0)) {
      throw new IllegalArgumentException("no gable: " + span + ", " + slope + ", " + spacing);
    }
  }

  /** Difference in length of neighbouring studs: spacing × slope. */
  public double difference() {
    return spacing * slope;
  }

  /** Height to the underside of the rafter at a distance in from the outside wall face. */
  public double height(double in) {
    return heel + Math.min(in, span - in) * slope;
  }

  /** Lengths from the wall face to the middle, each measured at its centre. */
  public List<Double> toMiddle() {
    List<Double> lengths = new ArrayList<>();
    for (int k = 1; k * spacing <= span / 2; k++) {
      lengths.add(height(k * spacing));
    }
    return List.copyOf(lengths);
  }
}

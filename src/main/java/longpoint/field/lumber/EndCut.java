package longpoint.field.lumber;

/**
 * One end of a piece, as lines marked on it; the saw is set from square.
 *
 * @param face line on the wide face, degrees from square: a plumb cut leans by the slope
 * @param edge line on the top edge, degrees from square: the side cut of a jack; the mitre of a
 *     fascia, negative at an inward corner, where the outer face is the shorter one
 */
public record EndCut(double face, double edge) implements Comparable<EndCut> {
  public static final EndCut SQUARE = new EndCut(0, 0);

  public EndCut {
    if (!(Math.abs(face) < 90) || !(Math.abs(edge) < 90)) {
      throw new IllegalArgumentException("no cut: " + face + ", " + edge);
    }
  }

  static EndCut onFace(double degrees) {
    return new EndCut(degrees, 0);
  }

  static EndCut onEdge(double degrees) {
    return new EndCut(0, degrees);
  }

  /** To a hundredth of a degree, finer than any saw's scale. */
  EndCut rounded() {
    return new EndCut(Math.rint(100 * face) / 100, Math.rint(100 * edge) / 100);
  }

  /** Squarer first; says nothing of the cut itself. */
  @Override
  public int compareTo(EndCut other) {
    int byFace = Double.compare(face, other.face);
    return byFace != 0 ? byFace : Double.compare(edge, other.edge);
  }
}

package longpoint.field.lumber;

/**
 * One piece, or one row of boards, before like ones are put together.
 *
 * @param mark it already has on other sheets; empty if it has none
 * @param length as it is marked, see {@link Cut}
 * @param at what it belongs to
 */
record Piece(
    String mark, Use use, Section section, double length, EndCut from, EndCut to, String at) {
  Piece(Use use, Section section, double length, EndCut from, EndCut to, String at) {
    this("", use, section, length, from, to, at);
  }

  Piece part(double length, EndCut from, EndCut to) {
    return new Piece(mark, use, section, length, from, to, at);
  }

  /** Board it takes up: what its ends reach past its marked length comes on top. */
  double board() {
    return length + slant();
  }

  /**
   * Ends cut out of square reach past the mark by the section times the cut's tangent; ends that
   * lean the same way, as two plumb cuts do, share it. Studs are marked at their long points.
   */
  double slant() {
    if (use == Use.GABLE_STUD) {
      return 0;
    }
    double face = Math.max(Math.abs(from.face()), Math.abs(to.face()));
    return reach(section.width(), face) + edge(from) + edge(to);
  }

  /** An inside mitre, and a side cut measured on the centre line, run on past the mark. */
  private double edge(EndCut end) {
    if (end.face() == 0) {
      return end.edge() < 0 ? reach(section.thickness(), end.edge()) : 0;
    }
    return reach(section.thickness() / 2, end.edge());
  }

  private static double reach(double size, double degrees) {
    return size * Math.tan(Math.toRadians(Math.abs(degrees)));
  }

  /** The same piece turned end for end so that like pieces come the same way round. */
  Piece ordered() {
    return to.compareTo(from) > 0 ? this : part(length, to, from);
  }
}

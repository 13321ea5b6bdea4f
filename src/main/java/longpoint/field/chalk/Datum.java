package longpoint.field.chalk;

import java.util.Comparator;
import java.util.Optional;
import longpoint.deck.PieceEdge;
import longpoint.deck.PlaneDeck;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * The corner of a plane that its figures are taped from: an end of its fascia where a rake starts
 * if there is one, else where a hip starts, else the inside corner at a valley. Left before right.
 *
 * @param corner in words, for the head of the sheet
 * @param end which end of the fascia
 * @param u of that corner in the plane's own figures
 */
public record Datum(Worded corner, End end, double u) {
  /** An end of the fascia, seen from the ground facing the plane. */
  public enum End {
    LEFT,
    RIGHT
  }

  static Datum of(PlaneDeck deck) {
    double left = 0;
    double right = rightEndOfEave(deck);
    Optional<PieceEdge> atLeft = rising(deck, left);
    Optional<PieceEdge> atRight = rising(deck, right);
    End end = rank(atRight) < rank(atLeft) ? End.RIGHT : End.LEFT;
    Optional<PieceEdge> edge = end == End.LEFT ? atLeft : atRight;
    String side = end == End.LEFT ? "field.corner.left." : "field.corner.right.";
    return new Datum(Phrase.of(side + words(edge)), end, end == End.LEFT ? left : right);
  }

  private static double rightEndOfEave(PlaneDeck deck) {
    double near = deck.panel().sliver();
    return deck.ground().stream()
        .map(Region::shell)
        .flatMap(r -> r.points().stream())
        .filter(p -> Math.abs(p.y()) <= near)
        .mapToDouble(Point::x)
        .max()
        .orElse(0);
  }

  /** The side that climbs from an end of the fascia. */
  private static Optional<PieceEdge> rising(PlaneDeck deck, double u) {
    double near = deck.panel().sliver();
    Point corner = new Point(u, 0);
    return deck.rims().stream()
        .filter(e -> e.line().distance(corner) <= near)
        .filter(e -> Math.max(e.line().from().y(), e.line().to().y()) > near)
        .min(Comparator.comparingInt(e -> rank(Optional.of(e))));
  }

  private static int rank(Optional<PieceEdge> edge) {
    return edge.map(PieceEdge::use)
        .map(
            use ->
                switch (use) {
                  case RAKE -> 0;
                  case HIP -> 1;
                  case ABUTMENT, STEP -> 2;
                  case VALLEY, SHEET_LINE -> 3;
                  default -> 4;
                })
        .orElse(4);
  }

  private static String words(Optional<PieceEdge> edge) {
    return edge.map(PieceEdge::use)
        .map(
            use ->
                switch (use) {
                  case RAKE -> "rake";
                  case HIP -> "hip";
                  case ABUTMENT, STEP -> "wall";
                  case VALLEY, SHEET_LINE -> "valley";
                  default -> "end";
                })
        .orElse("end");
  }

  /** A point of the plane as it is taped: across from the corner, and up. */
  public Point taped(Point uv) {
    return new Point(end == End.LEFT ? uv.x() - u : u - uv.x(), uv.y());
  }

  /** The point of the plane that is taped so; undoes {@link #taped}. */
  public Point onPlane(Point taped) {
    return new Point(end == End.LEFT ? taped.x() + u : u - taped.x(), taped.y());
  }
}

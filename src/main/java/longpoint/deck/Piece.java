package longpoint.deck;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Bounds;
import longpoint.geometry.Region;

/**
 * One piece of sheathing in its place. Sizes are on the module; the cut piece is scant by the gap.
 *
 * @param id plane id, a colon, and the piece's number; unique in the design
 * @param number on its plane, from 1: course by course from the fascia, left to right
 * @param course from 1 at the fascia
 * @param outline in (u, v)
 * @param edges its sides, in the order of the outline's shell and then its holes
 * @param cut names pieces of one size and shape: the same letters can be cut from one pattern,
 *     turned end for end if need be; never flipped over
 */
public record Piece(
    String id, int number, int course, Region outline, List<PieceEdge> edges, String cut) {
  /** The letters of whole sheets. */
  public static final String WHOLE = "whole";

  public Piece {
    Objects.requireNonNull(id);
    Objects.requireNonNull(outline);
    Objects.requireNonNull(cut);
    edges = List.copyOf(edges);
  }

  public Bounds bounds() {
    return outline.shell().bounds();
  }

  public double area() {
    return outline.area();
  }

  /** Along the eave, over all. */
  public double length() {
    return bounds().width();
  }

  /** Up the slope, over all. */
  public double width() {
    return bounds().height();
  }

  /** The longer of its lower and upper edges; the whole length where neither runs level. */
  public double longPoint() {
    double longest = Math.max(level(bounds().minY()), level(bounds().maxY()));
    return longest > 0 ? longest : length();
  }

  /** The shorter of its lower and upper edges; 0 where it runs to a point. */
  public double shortPoint() {
    return Math.min(level(bounds().minY()), level(bounds().maxY()));
  }

  /** Length of the sides that lie at one height. */
  private double level(double v) {
    double near = (bounds().width() + bounds().height()) * LEVEL;
    return edges.stream()
        .filter(e -> Math.abs(e.line().from().y() - v) <= near)
        .filter(e -> Math.abs(e.line().to().y() - v) <= near)
        .mapToDouble(PieceEdge::length)
        .sum();
  }

  /** Corners this near one height, as a share of the piece's size, are level: rounding only. */
  private static final double LEVEL = 1e-8;

  public Piece withCut(String cut) {
    return new Piece(id, number, course, outline, edges, cut);
  }
}

package longpoint.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.units.LengthUnit;

/**
 * A piece of the building under one roof: a wall outline with one plate height.
 *
 * <p>Sides are numbered from 0: first those of the outline, then those of each hole in turn.
 *
 * @param id short and stable, unique in the plan
 * @param name what people call it
 * @param existing already built, as against to be built
 * @param outline outside face of wall framing, counter-clockwise
 * @param holes courtyards and light wells, clockwise
 * @param plateHeight top of the wall plate above the plan's datum, plan units
 * @param edges one for each side, in the order of the sides
 */
public record Part(
    String id,
    String name,
    boolean existing,
    Ring outline,
    List<Ring> holes,
    double plateHeight,
    List<Edge> edges,
    Frame frame,
    Deck deck,
    Extras extras) {
  public Part {
    Objects.requireNonNull(id);
    Objects.requireNonNull(name);
    Objects.requireNonNull(outline);
    holes = List.copyOf(holes);
    edges = List.copyOf(edges);
    Objects.requireNonNull(frame);
    Objects.requireNonNull(deck);
    Objects.requireNonNull(extras);
    int sides = outline.size() + holes.stream().mapToInt(Ring::size).sum();
    if (edges.size() != sides) {
      throw new IllegalArgumentException(
          "part " + id + " has " + sides + " sides but " + edges.size() + " edges");
    }
  }

  /**
   * A part as it is when its outline has just been drawn.
   *
   * @param kinds one for each side, those of the holes last
   */
  public static Part fresh(
      String id, String name, Region ground, List<EdgeKind> kinds, LengthUnit unit) {
    return new Part(
        id,
        name,
        false,
        ground.shell(),
        ground.holes(),
        usualPlateHeight(unit),
        kinds.stream().map(Edge::of).toList(),
        Frame.of(unit),
        Deck.of(unit),
        Extras.NONE);
  }

  /**
   * Top of plate above the floor for studs cut 92 5/8 in with three plates of 1 1/2 in: 97 1/8 in
   * (common practice), and 2440 mm where the plan is metric.
   */
  private static double usualPlateHeight(LengthUnit unit) {
    return unit == LengthUnit.INCH ? 97.125 : 2440;
  }

  public int sideCount() {
    return edges.size();
  }

  /** Outline and holes, in the order their sides are numbered. */
  public List<Ring> rings() {
    List<Ring> rings = new ArrayList<>(holes.size() + 1);
    rings.add(outline);
    rings.addAll(holes);
    return rings;
  }

  /**
   * The wall line of a side.
   *
   * @param side 0 to {@link #sideCount()} − 1
   */
  public Segment side(int side) {
    int first = 0;
    for (Ring ring : rings()) {
      if (side < first + ring.size()) {
        return ring.side(side - first);
      }
      first += ring.size();
    }
    throw new IndexOutOfBoundsException("part " + id + " has no side " + side);
  }

  public Region region() {
    return new Region(outline, holes);
  }

  /**
   * This part with its outline counter-clockwise and its holes clockwise, each edge staying with
   * its side. A ring that is turned starts at the same corner.
   */
  public Part rightWayRound() {
    List<Ring> turned = new ArrayList<>();
    List<Edge> kept = new ArrayList<>();
    for (Ring ring : rings()) {
      List<Edge> own = new ArrayList<>(edges.subList(kept.size(), kept.size() + ring.size()));
      Ring other = backwards(ring);
      boolean outline = turned.isEmpty();
      // Asked both ways, so that a ring too thin to tell is left as it is, now and ever after.
      if (ring.counterClockwise() != outline && other.counterClockwise() == outline) {
        Collections.reverse(own);
        turned.add(other);
      } else {
        turned.add(ring);
      }
      kept.addAll(own);
    }
    return withShape(turned.get(0), turned.subList(1, turned.size()), kept);
  }

  /** From the same first corner, so that side i becomes side n − 1 − i. */
  private static Ring backwards(Ring ring) {
    List<Point> corners = new ArrayList<>(ring.points());
    Collections.reverse(corners.subList(1, corners.size()));
    return new Ring(corners);
  }

  public Part withShape(Ring outline, List<Ring> holes, List<Edge> edges) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }

  public Part withEdge(int side, Edge edge) {
    List<Edge> changed = new ArrayList<>(edges);
    changed.set(side, edge);
    return withShape(outline, holes, changed);
  }

  public Part withId(String id) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }

  public Part withName(String name) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }

  public Part withExisting(boolean existing) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }

  public Part withPlateHeight(double plateHeight) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }

  public Part withFrame(Frame frame) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }

  public Part withDeck(Deck deck) {
    return new Part(id, name, existing, outline, holes, plateHeight, edges, frame, deck, extras);
  }
}

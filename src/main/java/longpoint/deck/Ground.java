package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;

/**
 * What of one plane is sheathed, laid flat, with its sides named.
 *
 * @param plane as the surface gives it
 * @param unfold plan to (u, v)
 * @param panel its sheets
 * @param regions to be sheathed, in (u, v); ends at the sheet line on the deck's top face where the
 *     plane lies on another's deck
 * @param rims the named sides of the regions
 */
record Ground(
    RoofPlane plane, Unfold unfold, Panel panel, List<Region> regions, List<PieceEdge> rims) {

  /** Another plane's deck that this plane's deck comes down on. */
  record Bed(RoofPlane plane, Unfold unfold, double thickness) {}

  /** A roof line with the plane on its far side, if there is one. */
  record Line(RoofLine line, Optional<Unfold> beyond) {}

  /**
   * How near a side has to be to a roof line to be part of it, in sheet slivers. Both come from the
   * same corners, so the true difference is rounding; half a sliver keeps distinct lines apart.
   */
  private static final double SAME_LINE_IN_SLIVERS = 0.5;

  /**
   * How far past a lower plane's edge its deck still counts as a bed, in deck thicknesses: beyond
   * its fascia by about what the two decks are thick, so that the cut at a sheet line runs straight
   * out to the corner.
   */
  private static final double BED_MARGIN_IN_THICKNESSES = 2;

  /**
   * @param walkway of what lies beneath another roof, how far in is sheathed; empty for all of it
   * @param beds lower decks this plane lies on, by overlay
   * @param lines roof lines that touch this plane
   */
  static Ground of(
      RoofPlane plane,
      Unfold unfold,
      Panel panel,
      Optional<Double> walkway,
      List<Bed> beds,
      List<Line> lines) {
    List<Region> regions = sheathed(plane, unfold, walkway);
    for (Bed bed : beds) {
      regions = Overlay.minus(regions, beneath(bed, unfold, panel));
    }
    List<Region> solid = regions.stream().filter(r -> r.area() > crumb(panel)).toList();
    List<PieceEdge> rims = new ArrayList<>();
    for (Region region : solid) {
      sides(region).forEach(s -> rims.add(name(s, unfold, panel, beds, lines)));
    }
    return new Ground(plane, unfold, panel, solid, rims);
  }

  /** Scraps left over from an overlay of two outlines that share sides. */
  private static double crumb(Panel panel) {
    return panel.sliver() * panel.sliver();
  }

  private static List<Region> sheathed(RoofPlane plane, Unfold unfold, Optional<Double> walkway) {
    List<Region> visible = plane.visible().stream().map(unfold::flat).toList();
    List<Region> covered = plane.covered().stream().map(unfold::flat).toList();
    List<Region> whole =
        covered.isEmpty() && visible.size() == 1
            ? visible
            : Overlay.union(Stream.concat(visible.stream(), covered.stream()).toList());
    if (walkway.isEmpty() || covered.isEmpty()) {
      return whole;
    }
    return Overlay.common(whole, Overlay.grown(visible, walkway.get()));
  }

  /** The ground, in this plane's (u, v), over which its deck's top would be below the bed's top. */
  private static List<Region> beneath(Bed bed, Unfold unfold, Panel panel) {
    List<Region> footprint =
        Stream.concat(bed.plane.visible().stream(), bed.plane.covered().stream())
            .map(r -> onDeck(r, unfold, panel))
            .toList();
    double margin = BED_MARGIN_IN_THICKNESSES * (panel.thickness() + bed.thickness);
    List<Region> wide = margin > 0 ? Overlay.grown(footprint, margin) : footprint;
    return wide.stream()
        .flatMap(r -> Clip.above(r, uv -> -over(bed, unfold, panel, uv), panel).stream())
        .toList();
  }

  private static Region onDeck(Region plan, Unfold unfold, Panel panel) {
    return new Region(
        new Ring(
            plan.shell().points().stream()
                .map(p -> unfold.flatOnDeck(p, panel.thickness()))
                .toList()));
  }

  /** Height of this deck's top above the bed's top, plumb. */
  private static double over(Bed bed, Unfold unfold, Panel panel, Point uv) {
    var top = unfold.space(uv, panel.thickness());
    var below = bed.plane.plane();
    return top.z() - below.heightAt(top.plan()) - bed.thickness * below.areaFactor();
  }

  private static List<Segment> sides(Region region) {
    return Stream.concat(Stream.of(region.shell()), region.holes().stream())
        .flatMap(r -> Stream.iterate(0, i -> i < r.size(), i -> i + 1).map(r::side))
        .toList();
  }

  private static PieceEdge name(
      Segment side, Unfold unfold, Panel panel, List<Bed> beds, List<Line> lines) {
    double near = panel.sliver() * SAME_LINE_IN_SLIVERS;
    for (Bed bed : beds) {
      if (Math.abs(over(bed, unfold, panel, side.from())) <= near
          && Math.abs(over(bed, unfold, panel, side.to())) <= near) {
        return new PieceEdge(
            side, PieceEdge.Use.SHEET_LINE, Bevel.onDeckBelow(unfold, bed.unfold()));
      }
    }
    for (Line line : lines) {
      Segment flat =
          new Segment(unfold.flat(line.line.from().plan()), unfold.flat(line.line.to().plan()));
      if (flat.length() > near && on(side, flat, near)) {
        return new PieceEdge(side, use(line.line), Bevel.along(unfold, flat, line));
      }
    }
    boolean low = Math.max(Math.abs(side.from().y()), Math.abs(side.to().y())) <= near;
    return new PieceEdge(side, low ? PieceEdge.Use.FASCIA : PieceEdge.Use.END, 0);
  }

  /** Whether a short line lies along a longer one. */
  static boolean on(Segment piece, Segment whole, double near) {
    return Math.abs(whole.offset(piece.from())) <= near
        && Math.abs(whole.offset(piece.to())) <= near
        && whole.distance(piece.middle()) <= near;
  }

  private static PieceEdge.Use use(RoofLine line) {
    return switch (line.kind()) {
      case RIDGE -> PieceEdge.Use.RIDGE;
      case HIP -> PieceEdge.Use.HIP;
      case VALLEY -> PieceEdge.Use.VALLEY;
      case EAVE -> PieceEdge.Use.FASCIA;
      case RAKE -> PieceEdge.Use.RAKE;
      case BREAK -> PieceEdge.Use.BREAK;
      case ABUTMENT -> PieceEdge.Use.ABUTMENT;
      case STEP -> PieceEdge.Use.STEP;
    };
  }

  double area() {
    return regions.stream().mapToDouble(Region::area).sum();
  }
}

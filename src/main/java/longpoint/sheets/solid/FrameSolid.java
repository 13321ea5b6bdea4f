package longpoint.sheets.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.drawing.Ink;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Trusses and rafters in their places, each as its lines: of a truss the outline of its mark and
 * its webs, of a rafter the line along the top of it. The webs are an aid to the eye, not
 * engineered.
 */
final class FrameSolid {
  private FrameSolid() {}

  /** Trusses first, subject the truss; then rafters, subject the rafter's mark. */
  static List<SolidEdge> of(FramingSet framing, RoofSurface surface) {
    Map<String, TrussMark> marks = new HashMap<>();
    framing.marks().forEach(m -> marks.put(m.mark(), m));
    List<SolidEdge> edges = new ArrayList<>();
    for (Truss truss : framing.trusses()) {
      TrussMark mark = marks.get(truss.mark());
      if (mark != null && !truss.from().equals(truss.to())) {
        truss(truss, mark, edges);
      }
    }
    for (Rafter rafter : framing.rafters()) {
      for (Segment place : rafter.places()) {
        rafter(rafter, place, surface).ifPresent(edges::add);
      }
    }
    return edges;
  }

  private static void truss(Truss truss, TrussMark mark, List<SolidEdge> edges) {
    for (Segment chord : mark.shape().chords()) {
      edges.add(member(truss, mark, SolidEdge.Kind.CHORD, chord));
    }
    for (Segment web : mark.shape().webs()) {
      edges.add(member(truss, mark, SolidEdge.Kind.WEB, web));
    }
  }

  private static SolidEdge member(Truss truss, TrussMark mark, SolidEdge.Kind kind, Segment drawn) {
    return new SolidEdge(
        kind,
        truss.id(),
        Ink.MAIN,
        placed(truss, mark, drawn.from()),
        placed(truss, mark, drawn.to()));
  }

  /**
   * @param drawn v along the truss and z above its plate, as in its mark
   */
  private static Point3 placed(Truss truss, TrussMark mark, Point drawn) {
    double v =
        switch (truss.turn()) {
          case AS_DRAWN -> drawn.x();
          case END_FOR_END -> mark.span() - drawn.x();
        };
    Point along = new Segment(truss.from(), truss.to()).direction();
    return truss.from().plus(along.times(v)).at(truss.plate() + drawn.y());
  }

  /** Its foot stands on the roof over it; a place without a roof has no height to give. */
  private static Optional<SolidEdge> rafter(Rafter rafter, Segment place, RoofSurface surface) {
    return surface.planes().stream()
        .filter(p -> p.part().equals(rafter.part()))
        .min(Comparator.comparingDouble(p -> off(p, place.middle())))
        .map(
            p -> {
              double foots = p.plane().heightAt(place.from());
              Segment whole = rafter.drawn(place);
              double slope = rafter.slope();
              double below = slope * whole.from().distance(place.from());
              double above = slope * whole.to().distance(place.to());
              Point3 foot = whole.from().at(foots - below);
              Point3 head = whole.to().at(foots + rafter.rise() + above);
              return new SolidEdge(SolidEdge.Kind.CHORD, rafter.mark(), Ink.MAIN, foot, head);
            });
  }

  /** How far a place lies outside a plane's ground; 0 within it. */
  private static double off(RoofPlane plane, Point at) {
    return Stream.concat(plane.visible().stream(), plane.covered().stream())
        .mapToDouble((Region r) -> r.contains(at) ? 0 : r.edgeDistance(at))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}

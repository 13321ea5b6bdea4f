package longpoint.deck;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import longpoint.deck.nest.CourseBound;
import longpoint.deck.nest.Nest;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;

/** Shares the pieces of all planes out over sheets, kind by kind, and works out the bounds. */
final class Cutting {
  private Cutting() {}

  /**
   * @param found the bounds, and sharings out found before, by kind of sheet; used where they take
   *     fewer sheets
   */
  static List<Stock> stock(List<PlaneDeck> planes, Refining.Found found) {
    Map<Panel, List<Piece>> pieces = new LinkedHashMap<>();
    for (PlaneDeck plane : planes) {
      if (!plane.pieces().isEmpty()) {
        pieces.computeIfAbsent(plane.panel(), p -> new ArrayList<>()).addAll(plane.pieces());
      }
    }
    List<Stock> stock = new ArrayList<>();
    pieces.forEach(
        (panel, all) ->
            stock.add(
                stock(
                    panel,
                    all,
                    found.bounds().get(panel),
                    found.places().getOrDefault(panel, List.of()))));
    return stock;
  }

  /**
   * Fewest sheets of each kind that the courses can need, however they are cut.
   *
   * @param bound how it is worked out
   */
  static Map<Panel, Integer> bounds(
      List<Sheathing.Choice> choices, ToIntFunction<CourseBound> bound) {
    Map<Panel, CourseBound> sums = new LinkedHashMap<>();
    for (Sheathing.Choice choice : choices) {
      Panel panel = choice.ground().panel();
      CourseBound sum = sums.computeIfAbsent(panel, p -> new CourseBound(p.length(), p.width()));
      choice.strips().forEach(s -> add(sum, s));
    }
    Map<Panel, Integer> bounds = new LinkedHashMap<>();
    sums.forEach((panel, sum) -> bounds.put(panel, bound.applyAsInt(sum)));
    return bounds;
  }

  private static void add(CourseBound sum, Strip strip) {
    double[] turns = strip.turns();
    for (int i = 0; i + 1 < turns.length; i++) {
      double run = turns[i + 1] - turns[i];
      // Between turns every span's height changes evenly, so two points give it everywhere. Spans
      // one above the other may end up in different pieces and count each for itself.
      List<Strip.Span> near = strip.sections(turns[i] + run / 4);
      List<Strip.Span> far = strip.sections(turns[i] + run * 3 / 4);
      for (int k = 0; k < Math.min(near.size(), far.size()); k++) {
        double slant = (far.get(k).length() - near.get(k).length()) / 2;
        sum.add(run, near.get(k).length() - slant, far.get(k).length() + slant);
      }
    }
  }

  private static Stock stock(
      Panel panel, List<Piece> pieces, int bound, List<List<Nest.Place>> found) {
    List<Ring> outlines = pieces.stream().map(p -> p.outline().shell()).toList();
    List<List<Nest.Place>> nested = found;
    if (found.size() > bound || found.isEmpty()) {
      List<List<Nest.Place>> anew =
          Nest.pack(
              outlines,
              panel.length(),
              panel.width(),
              panel.rounding(),
              bound,
              Nest.Effort.THOROUGH);
      nested = found.isEmpty() || anew.size() < found.size() ? anew : found;
    }
    List<CutSheet> sheets = new ArrayList<>();
    for (List<Nest.Place> places : nested) {
      List<CutSheet.Placed> placed =
          places.stream().map(p -> placed(pieces.get(p.piece()), p)).toList();
      sheets.add(new CutSheet(sheets.size() + 1, placed));
    }
    double used = pieces.stream().mapToDouble(Piece::area).sum();
    return new Stock(panel, sheets, used, bound);
  }

  private static CutSheet.Placed placed(Piece piece, Nest.Place place) {
    Bounds box = piece.bounds();
    Region outline =
        new Region(
            moved(piece.outline().shell(), box, place),
            piece.outline().holes().stream().map(h -> moved(h, box, place)).toList());
    return new CutSheet.Placed(piece.id(), piece.cut(), place.turned(), outline);
  }

  private static Ring moved(Ring ring, Bounds box, Nest.Place place) {
    return new Ring(
        ring.points().stream()
            .map(
                p ->
                    place.turned()
                        ? new Point(box.maxX() - p.x() + place.u(), box.maxY() - p.y() + place.v())
                        : new Point(p.x() - box.minX() + place.u(), p.y() - box.minY() + place.v()))
            .toList());
  }
}

package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.Slope;

/** Roof lines, planes and eaves as tables: true lengths and areas, on top of framing. */
final class RoofTables {
  /** Letters to a row of eaves: three of two letters fit the narrowest sheet. */
  private static final int LETTERS = 3;

  private RoofTables() {}

  /** How many lines of each kind there are and how long they are together. */
  static SheetTable lines(Plan plan, RoofSurface surface) {
    Cells cells = new Cells(Words.of(plan));
    List<List<String>> rows = new ArrayList<>();
    for (LineKind kind : LineKind.values()) {
      List<RoofLine> lines = surface.lines().stream().filter(l -> l.kind() == kind).toList();
      if (!lines.isEmpty()) {
        double sum = lines.stream().mapToDouble(RoofLine::length).sum();
        rows.add(
            List.of(
                cells.words().layer(Layers.of(kind)),
                Cells.count(lines.size()),
                cells.length(sum)));
      }
    }
    return cells.table(
        cells.words().text("roof.lines"),
        List.of(cells.words("line"), cells.figure("count"), cells.figure("totalLength")),
        rows);
  }

  /** Every plane with its letter, part, slope and true area, and the sum. */
  static SheetTable planes(Plan plan, RoofSurface surface) {
    Words words = Words.of(plan);
    Cells cells = new Cells(words);
    Map<String, String> letters = PlaneMarks.of(surface);
    List<List<String>> rows = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      rows.add(
          List.of(
              letters.get(plane.id()),
              partName(plan, plane.part()),
              words.slope(slope(plan, plane)),
              words.area(plane.area())));
    }
    double sum = surface.planes().stream().mapToDouble(RoofPlane::area).sum();
    double covered = surface.planes().stream().mapToDouble(RoofPlane::coveredArea).sum();
    if (rows.size() > 1) {
      rows.add(List.of("", words.text("roof.allPlanes"), "", words.area(sum)));
    }
    if (covered > 0) {
      rows.add(List.of("", words.text("roof.covered"), "", words.area(covered)));
    }
    return cells.table(
        words.text("roof.planes"),
        List.of(
            new SheetTable.Column("", SheetTable.Kind.MARK),
            cells.words("part"),
            cells.mark("slope"),
            cells.figure("trueArea")),
        rows);
  }

  /**
   * What sets the height of every eave: its letter is that of the plane that rises from it. Eaves
   * alike share a row, as many as have room for their letters.
   */
  static SheetTable eaves(Plan plan, RoofSurface surface) {
    Cells cells = new Cells(Words.of(plan));
    Map<String, String> letters = PlaneMarks.of(surface);
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (RoofPlane plane : surface.planes()) {
      Optional<Side> side = plan.part(plane.part()).map(p -> plan.side(p, plane.edge()));
      if (side.isPresent() && side.get().kind() == EdgeKind.EAVE) {
        List<String> figures =
            List.of(
                cells.length(side.get().overhang()),
                cells.length(side.get().heel()),
                cells.length(side.get().plateHeight()));
        alike.computeIfAbsent(figures, f -> new ArrayList<>()).add(letters.get(plane.id()));
      }
    }
    List<List<String>> rows = new ArrayList<>();
    alike.forEach(
        (figures, all) -> {
          for (int i = 0; i < all.size(); i += LETTERS) {
            List<String> row = new ArrayList<>();
            row.add(String.join(" ", all.subList(i, Math.min(i + LETTERS, all.size()))));
            row.addAll(figures);
            rows.add(row);
          }
        });
    return cells.table(
        cells.words().text("roof.eaves"),
        List.of(
            new SheetTable.Column("", SheetTable.Kind.MARK),
            cells.figure("overhang"),
            cells.figure("heel"),
            cells.figure("plate")),
        rows);
  }

  /** As the user gave it, in the user's notation. */
  static Slope slope(Plan plan, RoofPlane plane) {
    return plan.part(plane.part())
        .map(p -> plan.side(p, plane.edge()).slope())
        .orElseGet(() -> Slope.ratio(plane.slope()));
  }

  private static String partName(Plan plan, String id) {
    return plan.part(id).map(Part::name).filter(n -> !n.isBlank()).orElse(id);
  }
}

package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.Slope;
import longpoint.units.SlopeText;

/** Roof lines, planes and eaves as tables: true lengths and areas, on top of framing. */
final class RoofTables {
  /** Letters to a row of eaves: three of two letters fit the narrowest sheet. */
  private static final int LETTERS = 3;

  private RoofTables() {}

  /** How many lines of each kind there are and how long they are together. */
  static SheetTable lines(Plan plan, RoofSurface surface) {
    List<List<String>> rows = new ArrayList<>();
    for (LineKind kind : LineKind.values()) {
      List<RoofLine> lines = surface.lines().stream().filter(l -> l.kind() == kind).toList();
      if (!lines.isEmpty()) {
        double sum = lines.stream().mapToDouble(RoofLine::length).sum();
        rows.add(
            List.of(
                Layers.of(kind).title(),
                String.format(Locale.ROOT, "%d", lines.size()),
                LengthText.of(sum, plan.unit())));
      }
    }
    return new SheetTable(
        "Roof lines",
        List.of(
            new SheetTable.Column("Line", SheetTable.Kind.WORDS),
            new SheetTable.Column("Count", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Total length", SheetTable.Kind.FIGURE)),
        rows);
  }

  /** Every plane with its letter, part, slope and true area, and the sum. */
  static SheetTable planes(Plan plan, RoofSurface surface) {
    Map<String, String> letters = PlaneMarks.of(surface);
    List<List<String>> rows = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      rows.add(
          List.of(
              letters.get(plane.id()),
              partName(plan, plane.part()),
              SlopeText.of(slope(plan, plane)),
              FigureText.area(plane.area(), plan.unit())));
    }
    double sum = surface.planes().stream().mapToDouble(RoofPlane::area).sum();
    double covered = surface.planes().stream().mapToDouble(RoofPlane::coveredArea).sum();
    if (rows.size() > 1) {
      rows.add(List.of("", "All planes", "", FigureText.area(sum, plan.unit())));
    }
    if (covered > 0) {
      rows.add(List.of("", "Covered", "", FigureText.area(covered, plan.unit())));
    }
    return new SheetTable(
        "Roof planes",
        List.of(
            new SheetTable.Column("", SheetTable.Kind.MARK),
            new SheetTable.Column("Part", SheetTable.Kind.WORDS),
            new SheetTable.Column("Slope", SheetTable.Kind.MARK),
            new SheetTable.Column("True area", SheetTable.Kind.FIGURE)),
        rows);
  }

  /**
   * What sets the height of every eave: its letter is that of the plane that rises from it. Eaves
   * alike share a row, as many as have room for their letters.
   */
  static SheetTable eaves(Plan plan, RoofSurface surface) {
    Map<String, String> letters = PlaneMarks.of(surface);
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (RoofPlane plane : surface.planes()) {
      Optional<Side> side = plan.part(plane.part()).map(p -> plan.side(p, plane.edge()));
      if (side.isPresent() && side.get().kind() == EdgeKind.EAVE) {
        List<String> figures =
            List.of(
                LengthText.of(side.get().overhang(), plan.unit()),
                LengthText.of(side.get().heel(), plan.unit()),
                LengthText.of(side.get().plateHeight(), plan.unit()));
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
    return new SheetTable(
        "Eaves",
        List.of(
            new SheetTable.Column("", SheetTable.Kind.MARK),
            new SheetTable.Column("Overhang", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Heel", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Plate", SheetTable.Kind.FIGURE)),
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

package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.desktop.Texts;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.WallName;
import longpoint.pipeline.Design;
import longpoint.plan.Side;
import longpoint.sheets.PlaneMarks;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeText;

/** One row of the figures: what it is called, its figure, and the small print. */
public sealed interface Figure {
  String name();

  String value();

  String smallPrint();

  /** A title over some rows. */
  record Heading(String name, String value) implements Figure {
    @Override
    public String smallPrint() {
      return "";
    }
  }

  /** A plane of the roof. */
  record OfPlane(RoofPlane plane, String name, String value, String smallPrint) implements Figure {}

  /** A line of the roof. */
  record OfLine(RoofLine line, String name, String value, String smallPrint) implements Figure {}

  /** The figures of what is selected, or of the whole roof when nothing is. */
  static List<Figure> of(Design design, Selection selection) {
    Set<String> planes = planesOf(design, selection);
    LengthUnit unit = design.plan().unit();
    List<Figure> rows = new ArrayList<>();
    List<RoofPlane> shown =
        design.surface().planes().stream().filter(p -> planes.contains(p.id())).toList();
    if (!shown.isEmpty()) {
      double area = shown.stream().mapToDouble(RoofPlane::area).sum();
      rows.add(new Heading(Texts.of("figures.planes"), FigureText.area(area, unit)));
      Map<String, String> letters = PlaneMarks.of(design.surface());
      shown.forEach(p -> rows.add(row(design, p, letters.get(p.id()))));
    }
    for (LineKind kind : LineKind.values()) {
      List<RoofLine> lines =
          design.surface().lines().stream()
              .filter(l -> l.kind() == kind && l.planes().stream().anyMatch(planes::contains))
              .toList();
      if (!lines.isEmpty()) {
        double length = lines.stream().mapToDouble(RoofLine::length).sum();
        rows.add(
            new Heading(
                Texts.of("lines." + kind.key()),
                lines.size() > 1 ? Texts.of("figures.total", LengthText.of(length, unit)) : ""));
        lines.forEach(l -> rows.add(row(l, unit)));
      }
    }
    return rows;
  }

  private static Set<String> planesOf(Design design, Selection selection) {
    Set<String> sides =
        selection.refs().stream()
            .filter(Ref.OfSide.class::isInstance)
            .map(r -> Side.id(r.part(), ((Ref.OfSide) r).side()))
            .collect(Collectors.toSet());
    Set<String> parts =
        selection.refs().stream()
            .filter(r -> !(r instanceof Ref.OfSide))
            .map(Ref::part)
            .collect(Collectors.toSet());
    return design.surface().planes().stream()
        .filter(p -> selection.isEmpty() || sides.contains(p.id()) || parts.contains(p.part()))
        .map(RoofPlane::id)
        .collect(Collectors.toSet());
  }

  private static Figure row(Design design, RoofPlane plane, String letter) {
    LengthUnit unit = design.plan().unit();
    String wall =
        design
            .plan()
            .part(plane.part())
            .filter(p -> plane.edge() < p.sideCount())
            .map(p -> WallName.of(p, plane.edge()))
            .orElse(plane.id());
    Slope.Notation notation =
        design
            .plan()
            .part(plane.part())
            .filter(p -> plane.edge() < p.sideCount())
            .map(p -> design.plan().side(p, plane.edge()).slope().notation())
            .orElse(Slope.Notation.RATIO);
    return new OfPlane(
        plane,
        Texts.of("figures.plane", letter, wall),
        SlopeText.of(new Slope(plane.slope(), notation)),
        Texts.of(
            "figures.plane.small",
            FigureText.area(plane.area(), unit),
            FigureText.angle(Math.toDegrees(Math.atan(plane.slope())))));
  }

  private static Figure row(RoofLine line, LengthUnit unit) {
    double degrees = Math.toDegrees(Math.atan2(line.rise(), line.run()));
    boolean level = LengthText.rounded(line.rise(), unit, longpoint.units.Rounding.NEAREST) == 0;
    return new OfLine(
        line,
        Texts.of("line." + line.kind().key()),
        LengthText.of(line.length(), unit),
        level
            ? Texts.of("figures.level")
            : Texts.of(
                "figures.line.small",
                LengthText.of(line.run(), unit),
                LengthText.of(line.rise(), unit),
                FigureText.angle(degrees)));
  }
}

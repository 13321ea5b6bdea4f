package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.desktop.Texts;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.WallName;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Side;
import longpoint.sheets.PlaneMarks;
import longpoint.surface.LineFigures;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;
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

  /**
   * A line of the roof, or several that are alike.
   *
   * @param lines at least one
   */
  record OfLines(List<RoofLine> lines, String name, String value, String smallPrint)
      implements Figure {
    public OfLines {
      lines = List.copyOf(lines);
    }

    /** Whether a crew would make the two alike. */
    private boolean like(OfLines other) {
      return name.equals(other.name)
          && value.equals(other.value)
          && smallPrint.equals(other.smallPrint);
    }

    private OfLines with(OfLines other) {
      List<RoofLine> all = new ArrayList<>(lines);
      all.addAll(other.lines);
      return new OfLines(all, name, value, smallPrint);
    }

    private OfLines counted() {
      return lines.size() == 1
          ? this
          : new OfLines(lines, Texts.of("figures.several", lines.size(), name), value, smallPrint);
    }
  }

  /**
   * A truss or rafter to make and where it stands.
   *
   * @param places centre lines in plan
   */
  record OfFrame(List<Segment> places, String name, String value, String smallPrint)
      implements Figure {
    public OfFrame {
      places = List.copyOf(places);
    }
  }

  /** The figures of what is selected, or of the whole roof when nothing is. */
  static List<Figure> of(Design design, Selection selection, LengthDisplay display) {
    Set<String> planes = planesOf(design, selection);
    Set<String> rakes = rakesOf(design, selection);
    LengthUnit unit = design.plan().unit();
    List<Figure> rows = new ArrayList<>();
    List<RoofPlane> shown =
        design.surface().planes().stream().filter(p -> planes.contains(p.id())).toList();
    if (!shown.isEmpty()) {
      double area = shown.stream().mapToDouble(RoofPlane::area).sum();
      rows.add(
          new Heading(Texts.of("figures.planes"), FigureText.area(area, unit, Texts.language())));
      Map<String, String> letters = PlaneMarks.of(design.surface());
      shown.forEach(p -> rows.add(row(design, p, letters.get(p.id()))));
    }
    for (LineKind kind : LineKind.values()) {
      List<RoofLine> lines =
          design.surface().lines().stream()
              .filter(l -> l.kind() == kind)
              .filter(l -> l.planes().stream().anyMatch(planes::contains) || rakes.contains(l.id()))
              .toList();
      if (!lines.isEmpty()) {
        double length = lines.stream().mapToDouble(RoofLine::length).sum();
        rows.add(
            new Heading(
                Texts.of("lines." + kind.key()),
                lines.size() > 1 ? Texts.of("figures.total", display.of(length, unit)) : ""));
        grouped(design, lines, display).forEach(f -> rows.add(f.counted()));
      }
    }
    rows.addAll(FrameFigures.of(design, partsOf(design, selection), display));
    rows.addAll(AidFigures.of(design, partsOf(design, selection), display));
    return rows;
  }

  /** Parts picked whole; all of them when nothing is picked. */
  private static Set<String> partsOf(Design design, Selection selection) {
    return selection.isEmpty()
        ? design.plan().parts().stream().map(Part::id).collect(Collectors.toSet())
        : Set.copyOf(selection.parts());
  }

  /** Rakes over gable walls picked by themselves, which have no plane of their own. */
  private static Set<String> rakesOf(Design design, Selection selection) {
    Set<String> rakes = new HashSet<>();
    for (Ref ref : selection.refs()) {
      if (ref instanceof Ref.OfSide picked && picked.in(design.plan())) {
        Part part = design.plan().part(picked.part()).orElseThrow();
        Side side = design.plan().side(part, picked.side());
        double near = side.reach() * BESIDE;
        design.surface().lines(LineKind.RAKE).stream()
            .filter(l -> side.kind() == EdgeKind.GABLE && belongs(design, l, part))
            .filter(l -> off(side, l.from().plan()) <= near && off(side, l.to().plan()) <= near)
            .forEach(l -> rakes.add(l.id()));
      }
    }
    return rakes;
  }

  /** A rake stands off its wall by the overhang and no more. */
  double BESIDE = 1.01;

  private static boolean belongs(Design design, RoofLine line, Part part) {
    return line.planes().stream()
        .flatMap(p -> design.surface().plane(p).stream())
        .anyMatch(p -> p.part().equals(part.id()));
  }

  /** Square distance from the line of a wall. */
  private static double off(Side side, Point at) {
    return Math.abs(side.wall().direction().cross(at.minus(side.wall().from())));
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
            .map(p -> WallName.of(design.plan(), p, plane.edge()))
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
        SlopeText.of(new Slope(plane.slope(), notation), Texts.language()),
        Texts.of(
            "figures.plane.small",
            FigureText.area(plane.area(), unit, Texts.language()),
            FigureText.angle(Math.toDegrees(Math.atan(plane.slope())), Texts.language())));
  }

  private static List<OfLines> grouped(Design design, List<RoofLine> lines, LengthDisplay display) {
    List<OfLines> groups = new ArrayList<>();
    for (RoofLine line : lines) {
      OfLines row = row(design, line, display);
      int same = 0;
      while (same < groups.size() && !groups.get(same).like(row)) {
        same++;
      }
      if (same < groups.size()) {
        groups.set(same, groups.get(same).with(row));
      } else {
        groups.add(row);
      }
    }
    return groups;
  }

  private static OfLines row(Design design, RoofLine line, LengthDisplay display) {
    LengthUnit unit = design.plan().unit();
    LineFigures figures = design.surface().figures(line);
    boolean level = LengthText.rounded(line.rise(), unit, Rounding.NEAREST) == 0;
    String small =
        level
            ? Texts.of("figures.level")
            : Texts.of(
                "figures.line.small",
                display.of(line.run(), unit),
                display.of(line.rise(), unit),
                FigureText.angle(figures.degrees(), Texts.language()));
    return new OfLines(
        List.of(line),
        Texts.of("line." + line.kind().key()),
        display.of(line.length(), unit),
        small + cross(figures, line.kind()));
  }

  /** What a hip or valley needs beyond its length: the bevel to each of its planes. */
  private static String cross(LineFigures figures, LineKind kind) {
    if (kind != LineKind.HIP && kind != LineKind.VALLEY) {
      return "";
    }
    String bevels =
        figures.sides().stream()
            .map(s -> FigureText.angle(s.backing(), Texts.language()))
            .distinct()
            .collect(Collectors.joining(" / "));
    return "\n" + Texts.of("figures.backing." + kind.key(), bevels);
  }
}

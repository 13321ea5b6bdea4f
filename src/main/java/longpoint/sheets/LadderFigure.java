package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.gable.Ladder;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/**
 * The ladder of one rake seen square to the slope: up the slope to the right, the fly rafter below,
 * the first truss inside above. Ladders alike share one figure.
 */
final class LadderFigure {
  private static final double LEAD_MM = 3;
  private static final double AIR_MM = 0.8;

  private final Ladder ladder;
  private final double thickness;
  private final LengthUnit unit;
  private final double unitsPerMm;
  private final Clutter clutter;
  private final List<Mark> marks = new ArrayList<>();

  private LadderFigure(Ladder ladder, double thickness, LengthUnit unit, double unitsPerMm) {
    this.ladder = ladder;
    this.thickness = thickness;
    this.unit = unit;
    this.unitsPerMm = unitsPerMm;
    this.clutter = new Clutter(unitsPerMm, ladder.rakeLength());
  }

  /** One figure for all ladders whose figures print alike, in the order first met. */
  static List<SheetFigure> all(
      Plan plan, List<Ladder> ladders, RoofNames names, double unitsPerMm) {
    Map<List<SheetFigure.Line>, List<Ladder>> alike = new LinkedHashMap<>();
    for (Ladder l : ladders) {
      List<SheetFigure.Line> words = of(plan, l, unitsPerMm).caption();
      alike.computeIfAbsent(words, w -> new ArrayList<>()).add(l);
    }
    List<SheetFigure> figures = new ArrayList<>();
    alike.forEach(
        (words, same) -> {
          String title =
              same.stream()
                  .map(l -> names.wall(l.side()) + ", " + l.rake().name().toLowerCase(Locale.ROOT))
                  .collect(Collectors.joining("; "));
          List<SheetFigure.Line> lines = new ArrayList<>();
          lines.add(SheetFigure.Line.of("Ladder " + (figures.size() + 1)));
          lines.add(SheetFigure.Line.of("For " + title + "."));
          lines.addAll(words);
          LadderFigure figure = of(plan, same.get(0), unitsPerMm);
          figure.sticks();
          figure.figures();
          figures.add(
              new SheetFigure("ladder " + title, unitsPerMm, figure.marks).captioned(lines));
        });
    return figures;
  }

  private static LadderFigure of(Plan plan, Ladder ladder, double unitsPerMm) {
    double thickness = plan.part(ladder.part()).map(p -> p.frame().thickness()).orElse(0.0);
    return new LadderFigure(ladder, thickness, plan.unit(), unitsPerMm);
  }

  private void sticks() {
    double length = ladder.rakeLength();
    double gable = ladder.overhang();
    double inner = ladder.overhang() + ladder.backSpan();
    box(0, length, gable, gable + thickness, FrameLayers.WEB);
    box(0, length, inner, inner + thickness, FrameLayers.WEB);
    box(0, length, 0, thickness, FrameLayers.TRUSS);
    double from = 0;
    for (int i = 0; i < ladder.blocks().size(); i++) {
      double to = from + ladder.blocks().get(i);
      if (to > from) {
        box(from, to, gable, gable + thickness, FrameLayers.LADDER);
      }
      if (i < ladder.lookouts().size()) {
        double end = to + ladder.lookoutWidth();
        box(to, end, thickness, thickness + ladder.lookoutLength(), FrameLayers.TRUSS);
        from = end;
      }
    }
  }

  private void box(double left, double right, double low, double high, Layer layer) {
    marks.add(
        new Mark.Path(
            List.of(
                new Point(left, low),
                new Point(right, low),
                new Point(right, high),
                new Point(left, high)),
            true,
            layer,
            ""));
  }

  /** Running marks of the lower edges below, clear lengths of the blocks between. */
  private void figures() {
    running(ladder.rakeLength());
    running(0);
    ladder.lookouts().forEach(this::running);
    words();
    double from = 0;
    double y = ladder.overhang() + thickness + AIR_MM * 2 * unitsPerMm;
    for (double block : ladder.blocks()) {
      String words = LengthText.of(block, unit);
      if (Lettering.width(words, Lettering.SMALL) * unitsPerMm < block) {
        text(new Point(from + block / 2, y), words, 0, Anchor.MIDDLE);
      }
      from += block + ladder.lookoutWidth();
    }
  }

  /** What the long pieces are, past their upper ends; which end is which, above. */
  private void words() {
    double right = ladder.rakeLength() + AIR_MM * 2 * unitsPerMm;
    double half = (thickness - Lettering.SMALL * unitsPerMm) / 2;
    text(new Point(right, half), "fly rafter", 0, Anchor.START);
    text(new Point(right, ladder.overhang() + half), "gable end", 0, Anchor.START);
    double inner = ladder.overhang() + ladder.backSpan();
    text(new Point(right, inner + half), "next in", 0, Anchor.START);
    double above = inner + thickness + AIR_MM * 2 * unitsPerMm;
    text(new Point(0, above), "Tail", 0, Anchor.START);
    text(new Point(ladder.rakeLength(), above), "Ridge", 0, Anchor.END);
  }

  private void running(double along) {
    Point end = new Point(along, -LEAD_MM * unitsPerMm);
    marks.add(Mark.Path.line(new Point(along, 0), end, FrameLayers.TAPE, ""));
    Point at = end.plus(new Point(Lettering.SMALL / 2 * unitsPerMm, -AIR_MM * unitsPerMm));
    text(at, LengthText.of(along, unit), 90, Anchor.END);
  }

  /** Lettering that would cover other lettering is left out: the caption has the figures. */
  private void text(Point at, String words, double degrees, Anchor anchor) {
    Mark text = new Mark.Text(at, words, Lettering.SMALL, degrees, anchor, FrameLayers.TAPE, "");
    Clutter.Shape shape = clutter.shape(text);
    if (!clutter.covers(shape)) {
      clutter.take(shape);
      marks.add(text);
    }
  }

  private List<SheetFigure.Line> caption() {
    List<SheetFigure.Line> lines = new ArrayList<>();
    lines.add(
        line(
            "Fly rafter "
                + length(ladder.rakeLength())
                + ", plumb cut "
                + Cells.saw(ladder.plumbCut())
                + " at both ends."));
    lines.add(
        line(ladder.lookouts().size() + " lookouts cut to " + length(ladder.lookoutLength())));
    lines.add(line("Marks from the tail: " + running()));
    lines.add(line("Blocks from the tail: " + blocks()));
    lines.add(
        line(
            "Lower end of each block "
                + FigureText.angle(ladder.blockBevel())
                + " for air. Top chord of the gable truss lower by "
                + LengthText.small(ladder.drop(), unit, Rounding.NEAREST)
                + " plumb."));
    ladder.review().forEach(r -> lines.add(new SheetFigure.Line(r, Layers.ALERT)));
    return lines;
  }

  private static SheetFigure.Line line(String words) {
    return SheetFigure.Line.of(words);
  }

  private String length(double length) {
    return LengthText.of(length, unit);
  }

  private String running() {
    return ladder.lookouts().stream().map(this::length).collect(Collectors.joining(", "));
  }

  private String blocks() {
    List<Double> all = ladder.blocks();
    String first = length(all.get(0));
    String last = length(all.get(all.size() - 1));
    return switch (all.size()) {
      case 1 -> first;
      case 2 -> first + ", " + last;
      default -> first + ", " + (all.size() - 2) + " of " + length(all.get(1)) + ", " + last;
    };
  }
}

package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.gable.Ladder;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
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
  private final Words words;
  private final double unitsPerMm;
  private final Clutter clutter;
  private final List<Mark> marks = new ArrayList<>();

  private LadderFigure(Ladder ladder, double thickness, Words words, double unitsPerMm) {
    this.ladder = ladder;
    this.thickness = thickness;
    this.words = words;
    this.unitsPerMm = unitsPerMm;
    this.clutter = new Clutter(unitsPerMm, ladder.rakeLength());
  }

  /** One figure for all ladders whose figures print alike, in the order first met. */
  static List<SheetFigure> all(
      Plan plan, List<Ladder> ladders, RoofNames names, double unitsPerMm) {
    Map<List<SheetFigure.Line>, List<Ladder>> alike = new LinkedHashMap<>();
    for (Ladder l : ladders) {
      List<SheetFigure.Line> caption = of(plan, l, unitsPerMm).caption();
      alike.computeIfAbsent(caption, w -> new ArrayList<>()).add(l);
    }
    List<SheetFigure> figures = new ArrayList<>();
    Words words = names.words();
    alike.forEach(
        (caption, same) -> {
          String title =
              same.stream()
                  .map(l -> names.wall(l.side()) + ", " + words.choice("hand", l.rake()))
                  .collect(Collectors.joining(words.text("apart")));
          List<SheetFigure.Line> lines = new ArrayList<>();
          lines.add(SheetFigure.Line.of(words.text("ladder.name", figures.size() + 1)));
          lines.add(SheetFigure.Line.of(words.text("ladder.for", title)));
          lines.addAll(caption);
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
    return new LadderFigure(ladder, thickness, Words.of(plan), unitsPerMm);
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
    names();
    double from = 0;
    double y = ladder.overhang() + thickness + AIR_MM * 2 * unitsPerMm;
    for (double block : ladder.blocks()) {
      String shown = words.length(block);
      if (Lettering.width(shown, Lettering.SMALL) * unitsPerMm < block) {
        text(new Point(from + block / 2, y), shown, 0, Anchor.MIDDLE);
      }
      from += block + ladder.lookoutWidth();
    }
  }

  /** What the long pieces are, past their upper ends; which end is which, above. */
  private void names() {
    double right = ladder.rakeLength() + AIR_MM * 2 * unitsPerMm;
    double half = (thickness - Lettering.SMALL * unitsPerMm) / 2;
    text(new Point(right, half), words.text("use.fly_rafter"), 0, Anchor.START);
    text(
        new Point(right, ladder.overhang() + half), words.text("ladder.gableEnd"), 0, Anchor.START);
    double inner = ladder.overhang() + ladder.backSpan();
    text(new Point(right, inner + half), words.text("ladder.nextIn"), 0, Anchor.START);
    double above = inner + thickness + AIR_MM * 2 * unitsPerMm;
    text(new Point(0, above), words.text("head.tail"), 0, Anchor.START);
    text(new Point(ladder.rakeLength(), above), words.text("layer.A-ROOF-RIDG"), 0, Anchor.END);
  }

  private void running(double along) {
    Point end = new Point(along, -LEAD_MM * unitsPerMm);
    marks.add(Mark.Path.line(new Point(along, 0), end, FrameLayers.TAPE, ""));
    Point at = end.plus(new Point(Lettering.SMALL / 2 * unitsPerMm, -AIR_MM * unitsPerMm));
    text(at, words.length(along), 90, Anchor.END);
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
            words.text(
                "ladder.flyRafter",
                length(ladder.rakeLength()),
                words.angle(90 - ladder.plumbCut()))));
    lines.add(
        line(
            words.counted(
                "ladder.lookouts", ladder.lookouts().size(), length(ladder.lookoutLength()))));
    lines.add(line(words.text("ladder.marks", running())));
    lines.add(line(words.text("ladder.blocks", blocks())));
    lines.add(
        line(
            words.text(
                "ladder.bevel",
                words.angle(ladder.blockBevel()),
                words.small(ladder.drop(), Rounding.NEAREST))));
    ladder.review().forEach(r -> lines.add(new SheetFigure.Line(words.say(r), Layers.ALERT)));
    return lines;
  }

  private static SheetFigure.Line line(String words) {
    return SheetFigure.Line.of(words);
  }

  private String length(double length) {
    return words.length(length);
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
      default -> words.text("ladder.blocks.row", first, all.size() - 2, length(all.get(1)), last);
    };
  }
}

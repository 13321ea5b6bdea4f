package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.units.LengthUnit;

/** Who, what and how large: the foot of a sheet's right-hand column; and the cautions beside it. */
final class TitleBlock {
  private static final String CAUTION =
      "An aid to layout, not engineering. The truss supplier's documents and the local code rule; a"
          + " licensed designer decides what carries load. Check every measure on site before"
          + " cutting.";

  private static final String ROOF_MEASURES =
      "Lengths and areas of the roof are true, on top of framing.";

  private static final double LEAD = 1.6;
  private static final double PAD = 3;
  private static final int TITLE_LINES = 3;
  private static final int PROBLEMS = 2;

  /** More than the text takes on the narrowest sheet. */
  private static final int CAUTION_LINES = 9;

  private final double width;
  private final List<Line> lines = new ArrayList<>();

  private record Line(String text, double height, Layer layer, double above) {}

  /**
   * @param view what the sheet shows, such as Roof plan
   */
  TitleBlock(
      Plan plan,
      List<Problem> problems,
      String view,
      String number,
      FittedView fitted,
      Paper paper,
      double width) {
    this(
        plan,
        problems,
        number + "   " + view,
        new Reading(fitted.scale().title(), ROOF_MEASURES, fitted.view().leftOff()),
        paper,
        width);
  }

  /**
   * What a reader must know to take figures off a sheet.
   *
   * @param scale as it stands in words
   * @param measures what its lengths are lengths of
   * @param leftOff figures and labels that had no room
   */
  record Reading(String scale, String measures, int leftOff) {}

  /**
   * @param heading number and name of the sheet
   */
  TitleBlock(
      Plan plan,
      List<Problem> problems,
      String heading,
      Reading reading,
      Paper paper,
      double width) {
    this.width = width;
    List<Problem> errors = problems.stream().filter(p -> p.level() == Problem.Level.ERROR).toList();
    if (!errors.isEmpty()) {
      add("Incomplete: not to be built from.", Lettering.MEDIUM, Layers.ALERT, 0, 2);
      errors.stream()
          .limit(PROBLEMS)
          .forEach(p -> add(p.message(), Lettering.SMALL, Layers.ALERT, 0, 2));
    }
    String title = plan.title().isBlank() ? "Untitled" : plan.title();
    add(title, Lettering.LARGE, Layers.TEXT, 2, TITLE_LINES);
    add(heading, Lettering.LARGE, Layers.TEXT, 1, 1);
    add("Scale " + reading.scale(), Lettering.MEDIUM, Layers.TEXT, 1, 1);
    String unit = plan.unit() == LengthUnit.INCH ? "feet and inches" : "millimetres";
    add("Measures in " + unit + ". Paper " + paper.title() + ".", Layers.TEXT, 1);
    add(reading.measures(), Layers.TEXT, 2);
    int leftOff = reading.leftOff();
    if (leftOff > 0) {
      String left = leftOff + (leftOff == 1 ? " figure or label has" : " figures or labels have");
      String cure = " no room on this paper: take larger paper or the CAD file.";
      add(left + cure, Lettering.SMALL, Layers.ALERT, 0.8, 3);
    }
    String parts = plan.parts().stream().map(TitleBlock::name).collect(Collectors.joining(", "));
    if (!parts.isEmpty()) {
      add((plan.parts().size() == 1 ? "Part: " : "Parts: ") + parts, Layers.TEXT, 3);
    }
  }

  private static String name(Part part) {
    return part.name().isBlank() ? part.id() : part.name();
  }

  private void add(String text, Layer layer, int most) {
    add(text, Lettering.SMALL, layer, 0.8, most);
  }

  private void add(String text, double height, Layer layer, double above, int most) {
    double first = above;
    for (String line : Lettering.wrapped(text, height, width - 2 * PAD, most)) {
      lines.add(new Line(line, height, layer, first));
      first = 0;
    }
  }

  /** The cautions every sheet carries, in lines from a top left corner down. */
  static List<Mark> cautions(Point topLeft, double width) {
    List<Mark> marks = new ArrayList<>();
    double y = topLeft.y();
    for (String line : Lettering.wrapped(CAUTION, Lettering.SMALL, width, CAUTION_LINES)) {
      y -= Lettering.SMALL * LEAD;
      marks.add(
          new Mark.Text(
              new Point(topLeft.x(), y),
              line,
              Lettering.SMALL,
              0,
              Anchor.START,
              Layers.SMALL_PRINT,
              ""));
    }
    return marks;
  }

  double height() {
    return 2 * PAD + lines.stream().mapToDouble(TitleBlock::step).sum();
  }

  private static double step(Line line) {
    return line.height() * LEAD + line.above();
  }

  List<Mark> marks(Point lowerLeft) {
    List<Mark> marks = new ArrayList<>();
    double top = lowerLeft.y() + height();
    marks.add(
        Mark.Path.line(
            new Point(lowerLeft.x(), top),
            new Point(lowerLeft.x() + width, top),
            Layers.FRAME,
            ""));
    double y = top - PAD;
    for (Line line : lines) {
      y -= step(line);
      Point at = new Point(lowerLeft.x() + PAD, y + line.height() * 0.3);
      marks.add(new Mark.Text(at, line.text(), line.height(), 0, Anchor.START, line.layer(), ""));
    }
    return marks;
  }
}

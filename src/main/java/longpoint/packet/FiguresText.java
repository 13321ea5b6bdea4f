package longpoint.packet;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import longpoint.export.Table;
import longpoint.pipeline.Design;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.sheets.RoofNames;
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
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** Every figure of a design as plain text for people: lengths rounded as they are read on site. */
public final class FiguresText {
  private final Design design;
  private final LengthUnit unit;
  private final RoofNames names;
  private final TextSections out = new TextSections();

  private FiguresText(Design design) {
    this.design = design;
    this.unit = design.plan().unit();
    this.names = new RoofNames(design.plan(), design.surface());
  }

  /** Text of several tables, ending in a line feed. */
  public static String of(Design design) {
    return of(design, Language.ENGLISH);
  }

  /**
   * Text of several tables, ending in a line feed.
   *
   * @param language of the problems; the tables are in English
   */
  public static String of(Design design, Language language) {
    return written(design, language).toString();
  }

  /** The same figures table by table, in the same order. */
  static List<Table> tables(Design design) {
    return listings(design).stream().map(Listing::table).toList();
  }

  /** The same tables, with what each row is about. */
  public static List<Listing> listings(Design design) {
    return written(design, Language.ENGLISH).listings();
  }

  private static TextSections written(Design design, Language language) {
    FiguresText text = new FiguresText(design);
    text.heading();
    text.problems(language);
    text.planes();
    text.lines();
    text.hipsAndValleys();
    text.lineTotals();
    FramingText.write(design.framing(), text.names, text.unit, text.out);
    LumberText.write(text.design.lumber(), text.names, text.unit, text.out);
    TakeOffText.write(design.takeOff(), text.unit, text.out);
    DeckText.write(design.deck(), design.chalk(), text.names, text.unit, text.out);
    return text.out;
  }

  /** What a plan is called on whatever is made of it. */
  static String title(Plan plan) {
    return plan.title().isBlank() ? "Untitled plan" : plan.title();
  }

  /** How lengths are told. */
  static String lengths(LengthUnit unit) {
    return switch (unit) {
      case INCH -> "Lengths in feet and inches to the nearest 1/16 in, on top of the framing.";
      case MILLIMETRE -> "Lengths in whole millimetres, on top of the framing.";
    };
  }

  private void heading() {
    out.heading(title(design.plan()));
    out.heading(lengths(unit));
    out.heading("An aid to layout, not engineering: the truss supplier and the local code rule.");
  }

  private void problems(Language language) {
    if (design.problems().isEmpty()) {
      return;
    }
    out.heading("\n" + Phrase.of("packet.first").in(language));
    for (Problem p : design.problems()) {
      out.line(told(p, language));
      if (!p.cure(language).isEmpty()) {
        out.line("  " + p.cure(language));
      }
    }
  }

  /** A problem in one line: how bad, and what; the words name the place. */
  static String told(Problem p, Language language) {
    String key =
        switch (p.level()) {
          case ERROR -> "packet.error";
          case WARNING -> "packet.warning";
          case NOTE -> "packet.note";
        };
    return Phrase.of(key, Worded.plain(p.message(language))).in(language);
  }

  private void planes() {
    TextTable table =
        new TextTable("plane", "wall", "slope", "plan area", "true area", "under other roof");
    for (RoofPlane p : design.surface().planes()) {
      table.rowOf(
          p.id(),
          names.plane(p.id()),
          names.wall(p.id()),
          SlopeText.of(slopeOf(p)),
          FigureText.area(p.planArea(), unit),
          FigureText.area(p.area(), unit),
          p.covered().isEmpty() ? "" : FigureText.area(p.coveredArea(), unit));
    }
    out.section("Roof planes", table);
  }

  private Slope slopeOf(RoofPlane plane) {
    Part part = design.plan().part(plane.part()).orElseThrow();
    return design.plan().side(part, plane.edge()).slope();
  }

  private void lines() {
    TextTable table = new TextTable("line", "length", "run", "rise", "between");
    for (RoofLine l : design.surface().lines()) {
      table.rowOf(
          l.id(),
          l.kind().key(),
          LengthText.of(l.length(), unit),
          LengthText.of(l.run(), unit),
          LengthText.of(l.rise(), unit),
          names.planes(l.planes()));
    }
    out.section("Roof lines", table);
  }

  private void hipsAndValleys() {
    TextTable table =
        new TextTable("line", "between", "angle", "in plan", "backing", "planes meet at", "drop");
    for (RoofLine l : design.surface().lines()) {
      if (l.kind() == LineKind.HIP || l.kind() == LineKind.VALLEY) {
        LineFigures figures = design.surface().figures(l);
        double stock = design.plan().part(partOf(l)).orElseThrow().frame().thickness();
        table.rowOf(
            l.id(),
            l.kind().key(),
            names.planes(l.planes()),
            FigureText.angle(figures.degrees()),
            each(figures, LineFigures.Beside::planAngle),
            each(figures, LineFigures.Beside::backing),
            figures.dihedral().isPresent()
                ? FigureText.angle(figures.dihedral().getAsDouble())
                : "",
            LengthText.small(figures.drop(stock), unit, Rounding.NEAREST));
      }
    }
    out.section(
        "Hips and valleys: in plan and backing for each plane, drop for one thickness", table);
  }

  private static String partOf(RoofLine line) {
    String plane = line.planes().get(0);
    return plane.substring(0, plane.lastIndexOf('/'));
  }

  private static String each(LineFigures figures, ToDoubleFunction<LineFigures.Beside> angle) {
    return figures.sides().stream()
        .map(side -> FigureText.angle(angle.applyAsDouble(side)))
        .collect(Collectors.joining(" "));
  }

  private void lineTotals() {
    Map<LineKind, Double> lengths = new EnumMap<>(LineKind.class);
    Map<LineKind, Integer> counts = new EnumMap<>(LineKind.class);
    for (RoofLine l : design.surface().lines()) {
      lengths.merge(l.kind(), l.length(), Double::sum);
      counts.merge(l.kind(), 1, Integer::sum);
    }
    TextTable table = new TextTable("kind", "number", "together");
    lengths.forEach(
        (kind, length) ->
            table.row(kind.key(), String.valueOf(counts.get(kind)), LengthText.of(length, unit)));
    out.section("Lines together", table);
  }
}

package longpoint.packet;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.export.Table;
import longpoint.pipeline.Design;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.sheets.RoofNames;
import longpoint.sheets.Words;
import longpoint.surface.LineFigures;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.units.Rounding;
import longpoint.units.Slope;

/** Every figure of a design as plain text for people: lengths rounded as they are read on site. */
public final class FiguresText {
  private final Design design;
  private final Words words;
  private final RoofNames names;
  private final TextSections out = new TextSections();

  private FiguresText(Design design) {
    this.design = design;
    this.names = new RoofNames(design.plan(), design.surface());
    this.words = names.words().from("packet");
  }

  /** Text of several tables in the plan's language, ending in a line feed. */
  public static String of(Design design) {
    return written(design).toString();
  }

  /** The same figures table by table, in the same order. */
  static List<Table> tables(Design design) {
    return listings(design).stream().map(Listing::table).toList();
  }

  /** The same tables, with what each row is about. */
  public static List<Listing> listings(Design design) {
    return written(design).listings();
  }

  private static TextSections written(Design design) {
    FiguresText text = new FiguresText(design);
    text.heading();
    text.problems();
    text.planes();
    text.lines();
    text.hipsAndValleys();
    text.lineTotals();
    FramingText.write(design.framing(), text.names, text.out);
    AidsText.write(design.aids(), design.plan(), text.names, text.out);
    LumberText.write(text.design.lumber(), text.names, text.out);
    TakeOffText.write(design.takeOff(), text.words, text.out);
    DeckText.write(design.deck(), design.chalk(), text.names, text.out);
    OnSiteText.write(design, text.names, text.out);
    return text.out;
  }

  /** What a plan is called on whatever is made of it. */
  static String title(Plan plan) {
    return plan.title().isBlank() ? words(plan).text("untitled") : plan.title();
  }

  /** What this package says of a plan. */
  static Words words(Plan plan) {
    return Words.of(plan).from("packet");
  }

  /** What goes before every figure, most dangerous first. */
  static List<String> cautions(Plan plan) {
    return Stream.of("caution.height", "caution.aid", "caution.rule", "caution.walls")
        .map(words(plan)::text)
        .toList();
  }

  /** How lengths are told. */
  static String lengths(Plan plan) {
    return words(plan).text("lengths." + plan.unit().symbol());
  }

  private void heading() {
    out.heading(title(design.plan()));
    out.heading(lengths(design.plan()));
    out.heading(words.text("aid"));
  }

  private void problems() {
    if (design.problems().isEmpty()) {
      return;
    }
    out.heading("\n" + words.text("first"));
    for (Problem p : design.problems()) {
      out.line(told(p, words));
      String cure = p.cure(words.language());
      if (!cure.isEmpty()) {
        out.line("  " + cure);
      }
    }
  }

  /** A problem in one line: how bad, and what; the words name the place. */
  static String told(Problem p, Words words) {
    String key =
        switch (p.level()) {
          case ERROR -> "error";
          case WARNING -> "warning";
          case NOTE -> "note";
        };
    return words.text(key, p.message(words.language()));
  }

  private void planes() {
    TextTable table =
        new TextTable(words, "plane", "wall", "slope", "planArea", "trueArea", "underOtherRoof");
    for (RoofPlane p : design.surface().planes()) {
      table.rowOf(
          p.id(),
          names.plane(p.id()),
          names.wall(p.id()),
          words.slope(slopeOf(p)),
          words.area(p.planArea()),
          words.area(p.area()),
          p.coveredArea() > 0 ? words.area(p.coveredArea()) : "");
    }
    out.section(words.text("planes"), table);
  }

  private Slope slopeOf(RoofPlane plane) {
    Part part = design.plan().part(plane.part()).orElseThrow();
    return design.plan().side(part, plane.edge()).slope();
  }

  private void lines() {
    TextTable table = new TextTable(words, "line", "length", "levelRun", "rise", "between");
    for (RoofLine l : design.surface().lines()) {
      table.rowOf(
          l.id(),
          names.kind(l.kind()),
          words.length(l.length()),
          words.length(l.run()),
          words.length(l.rise()),
          names.planes(l.planes()));
    }
    out.section(words.text("lines"), table);
  }

  private void hipsAndValleys() {
    TextTable table =
        new TextTable(
            words, "line", "between", "angle", "inPlan", "backing", "planesMeetAt", "drop");
    for (RoofLine l : design.surface().lines()) {
      if (l.kind() == LineKind.HIP || l.kind() == LineKind.VALLEY) {
        LineFigures figures = design.surface().figures(l);
        double stock = design.plan().part(partOf(l)).orElseThrow().frame().thickness();
        table.rowOf(
            l.id(),
            names.kind(l.kind()),
            names.planes(l.planes()),
            words.angle(figures.degrees()),
            each(figures, LineFigures.Beside::planAngle),
            each(figures, LineFigures.Beside::backing),
            figures.dihedral().isPresent() ? words.angle(figures.dihedral().getAsDouble()) : "",
            words.small(figures.drop(stock), Rounding.NEAREST));
      }
    }
    out.section(words.text("hipsAndValleys"), table);
  }

  private static String partOf(RoofLine line) {
    String plane = line.planes().get(0);
    return plane.substring(0, plane.lastIndexOf('/'));
  }

  private String each(LineFigures figures, ToDoubleFunction<LineFigures.Beside> angle) {
    return figures.sides().stream()
        .map(side -> words.angle(angle.applyAsDouble(side)))
        .collect(Collectors.joining(" "));
  }

  /** What a row about all lines of a kind has for its subject. */
  public static String kind(LineKind kind) {
    return "lines:" + kind.key();
  }

  private void lineTotals() {
    Map<LineKind, Double> lengths = new EnumMap<>(LineKind.class);
    Map<LineKind, Integer> counts = new EnumMap<>(LineKind.class);
    for (RoofLine l : design.surface().lines()) {
      lengths.merge(l.kind(), l.length(), Double::sum);
      counts.merge(l.kind(), 1, Integer::sum);
    }
    TextTable table = new TextTable(words, "kind", "number", "together");
    lengths.forEach(
        (kind, length) ->
            table.rowOf(
                kind(kind),
                names.kind(kind),
                String.valueOf(counts.get(kind)),
                words.length(length)));
    out.section(words.text("together"), table);
  }
}

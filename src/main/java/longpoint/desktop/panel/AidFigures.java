package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import longpoint.desktop.Texts;
import longpoint.field.lift.LiftSection;
import longpoint.field.loads.WallLoad;
import longpoint.field.restraint.RestraintRow;
import longpoint.field.restraint.RestraintRun;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.sheets.RoofNames;
import longpoint.sheets.Words;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/**
 * Restraint, lifts and loads as rows of figures; a row that is picked is shown on the sheet. Each
 * heading says that others rule.
 */
final class AidFigures {
  private final Design design;
  private final Set<String> parts;
  private final LengthDisplay display;
  private final Words words;
  private final List<Figure> rows = new ArrayList<>();

  private AidFigures(Design design, Set<String> parts, LengthDisplay display) {
    this.design = design;
    this.parts = parts;
    this.display = display;
    this.words = Words.of(design.plan().spoken(Texts.language()));
  }

  /**
   * @param parts ids of the parts asked for
   */
  static List<Figure> of(Design design, Set<String> parts, LengthDisplay display) {
    AidFigures figures = new AidFigures(design, parts, display);
    figures.restraint();
    figures.lifts();
    figures.loads();
    return figures.rows;
  }

  private LengthUnit unit() {
    return design.plan().unit();
  }

  private void restraint() {
    List<RestraintRun> runs =
        design.aids().restraint().runs().stream().filter(r -> parts.contains(r.part())).toList();
    if (!runs.isEmpty()) {
      heading("figures.restraint", "figures.restraint.rule");
    }
    for (RestraintRun run : runs) {
      int number = 0;
      for (RestraintRow row : run.rows()) {
        number++;
        String place = row.place().name().toLowerCase(Locale.ROOT);
        rows.add(
            new Figure.OfFrame(
                List.of(row.line()),
                Texts.of("figures.restraint.row", number, words.text("restraint.place." + place)),
                display.of(row.length(), unit()),
                Texts.of(
                    "figures.restraint.small",
                    display.of(row.over(), unit()),
                    row.boards(),
                    display.of(run.boards().length(), unit()))));
      }
      RestraintRun.Tolerances t = run.tolerances();
      String within =
          Texts.of("figures.restraint.within", small(t.plumb()), small(t.bow()), small(t.place()));
      rows.add(
          new Figure.OfFrame(
              run.rows().stream().map(RestraintRow::line).toList(),
              Texts.of("figures.restraint.first"),
              Texts.of("figures.restraint.braces", run.groundBraces()),
              within));
    }
  }

  private String small(double length) {
    return words.small(length, Rounding.DOWN);
  }

  private void lifts() {
    List<LiftSection> sections =
        design.aids().lifts().sections().stream().filter(s -> parts.contains(s.part())).toList();
    if (!sections.isEmpty()) {
      heading("figures.lifts", "figures.lifts.rule");
    }
    for (LiftSection s : sections) {
      rows.add(
          new Figure.OfFrame(
              places(s),
              Texts.of("figures.lift", s.name(), s.trusses().size()),
              words.weight(s.weight()),
              Texts.of(
                  "figures.lift.small",
                  display.of(s.balance().over(), unit()),
                  display.of(s.balance().across(), unit()),
                  s.points().size(),
                  words.angle(s.flattest()),
                  s.lines() == LiftSection.Lines.CANNOT ? "?" : words.weight(s.mostTension()))));
    }
  }

  private List<Segment> places(LiftSection section) {
    List<Segment> places = new ArrayList<>();
    for (Truss t : design.framing().trusses()) {
      if (section.trusses().contains(t.id())) {
        places.add(new Segment(t.from(), t.to()));
      }
    }
    return places;
  }

  /** Only where loads are typed: the lists have the areas of all. */
  private void loads() {
    Plan plan = design.plan();
    if (!plan.handling().loads().any()) {
      return;
    }
    RoofNames names = new RoofNames(plan.spoken(Texts.language()), design.surface());
    boolean first = true;
    for (WallLoad w : design.aids().loads().walls()) {
      String part = w.wall().substring(0, w.wall().lastIndexOf('/'));
      if (parts.contains(part)) {
        if (first) {
          heading("figures.loads", "figures.loads.rule");
          first = false;
        }
        rows.add(
            new Figure.OfFrame(
                List.of(stretch(plan, w)),
                names.wall(w.wall()),
                display.of(w.width(), unit()),
                Texts.of("figures.load.small", words.area(w.area()), forces(w))));
      }
    }
  }

  private String forces(WallLoad w) {
    List<String> said = new ArrayList<>();
    w.line()
        .dead()
        .ifPresent(f -> said.add(words.text("loads.line.dead") + " " + words.lineLoad(f)));
    w.line()
        .live()
        .ifPresent(f -> said.add(words.text("loads.line.live") + " " + words.lineLoad(f)));
    w.line()
        .snow()
        .ifPresent(f -> said.add(words.text("loads.line.snow") + " " + words.lineLoad(f)));
    w.line()
        .ceiling()
        .ifPresent(f -> said.add(words.text("loads.line.ceiling") + " " + words.lineLoad(f)));
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < said.size(); i++) {
      lines.append(i == 0 ? "" : i % 2 == 0 ? "\n" : ", ").append(said.get(i));
    }
    return lines.toString();
  }

  private static Segment stretch(Plan plan, WallLoad w) {
    Segment wall =
        plan.parts().stream()
            .flatMap(p -> plan.sides(p).stream())
            .filter(s -> s.id().equals(w.wall()))
            .map(Side::wall)
            .findFirst()
            .orElseThrow();
    Point along = wall.direction();
    return new Segment(
        wall.from().plus(along.times(w.from())), wall.from().plus(along.times(w.to())));
  }

  private void heading(String title, String rule) {
    rows.add(new Figure.Heading(Texts.of(title), Texts.of(rule)));
  }
}

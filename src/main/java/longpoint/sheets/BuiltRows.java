package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.field.built.AsBuiltCheck;
import longpoint.field.built.BuiltCorner;
import longpoint.field.built.BuiltTape;
import longpoint.field.built.BuiltWalls;
import longpoint.field.built.Change;
import longpoint.field.built.Diagonals;
import longpoint.field.built.NextTape;
import longpoint.field.built.OutOfSquare;
import longpoint.field.built.PlateLevel;
import longpoint.field.built.TrussSeat;
import longpoint.units.Rounding;

/** Heads and cells of what was found about the walls as built, the same on sheets and in lists. */
public final class BuiltRows {
  /** A residual's test is marked from here on: the limit of data snooping. */
  private static final double LIMIT = 3.29;

  private final RoofNames names;
  private final Words words;
  private final Cells cells;
  private final AsBuiltCheck check;

  private BuiltRows(RoofNames names, AsBuiltCheck check) {
    this.names = names;
    this.words = names.words();
    this.cells = new Cells(words);
    this.check = check;
  }

  /** Tables that have rows, in the order they are read. */
  public static List<RowTable> tables(RoofNames names, AsBuiltCheck check) {
    BuiltRows rows = new BuiltRows(names, check);
    List<RowTable> tables = new ArrayList<>();
    rows.tapes().ifPresent(tables::add);
    rows.next().ifPresent(tables::add);
    rows.square().ifPresent(tables::add);
    rows.diagonals().ifPresent(tables::add);
    rows.corners().ifPresent(tables::add);
    rows.plates().ifPresent(tables::add);
    rows.seats().ifPresent(tables::add);
    rows.changes().ifPresent(tables::add);
    return tables;
  }

  private BuiltWalls walls() {
    return check.walls();
  }

  private Optional<RowTable> table(
      String title, List<String> heads, List<List<String>> rows, List<String> subjects) {
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new RowTable(words, title, heads, rows, subjects));
  }

  /** A difference with its sign, in inches without feet. */
  private String off(double off) {
    String shown = words.small(Math.abs(off), Rounding.NEAREST);
    boolean none = shown.equals(words.small(0, Rounding.NEAREST));
    return none ? shown : (off > 0 ? "+" : "−") + shown;
  }

  private String between(int from, int to) {
    return words.text("fromTo", name(from), name(to));
  }

  private static String name(int corner) {
    return corner == 0 ? "?" : String.valueOf(corner);
  }

  private String part(int corner) {
    return corner == 0 || corner > walls().corners().size()
        ? ""
        : walls().corners().get(corner - 1).part();
  }

  private Optional<RowTable> tapes() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (BuiltTape t : walls().tapes()) {
      boolean nowhere = t.state() == BuiltTape.State.NOWHERE;
      Optional<BuiltTape.Check> c = t.check();
      rows.add(
          List.of(
              between(t.from(), t.to()),
              cells.length(t.reads()),
              nowhere ? "" : off(t.reads() - t.planned()),
              nowhere ? "" : off(t.residual()),
              c.map(k -> words.decimal(Math.abs(k.test()), 1)).orElse(""),
              c.map(k -> words.decimal(100 * k.redundancy(), 0)).orElse(""),
              c.map(k -> k.unseen().map(u -> words.small(u, Rounding.UP)).orElse("–")).orElse(""),
              words.choice("built.tape", t.state())));
      subjects.add(part(t.from()));
    }
    String title =
        words.text(
            "built.tapes",
            words.small(walls().accuracy(), Rounding.NEAREST),
            words.decimal(LIMIT, 2));
    return table(
        title,
        List.of(
            "'corners", "reads", "offPlan", "fitLessRead", "test", "checked", "unseen", "\"state"),
        rows,
        subjects);
  }

  private Optional<RowTable> next() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (NextTape n : walls().next()) {
      rows.add(List.of(between(n.from(), n.to()), words.choice("built.next", n.purpose())));
      subjects.add(part(n.from()));
    }
    return table(words.text("built.nextTapes"), List.of("'corners", "\"tellsWhat"), rows, subjects);
  }

  private Optional<RowTable> square() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (OutOfSquare s : walls().square()) {
      rows.add(
          List.of(
              String.valueOf(s.number()),
              names.part(s.part()),
              words.angle(s.planned()),
              words.angle(s.built()),
              off(s.out()),
              cells.length(s.over()),
              words.small(s.allowed(), Rounding.NEAREST)));
      subjects.add(s.part());
    }
    return table(
        words.text("built.square"),
        List.of("'corner", "\"part", "drawnAngle", "builtAngle", "outOfSquare", "over", "letPass"),
        rows,
        subjects);
  }

  private Optional<RowTable> diagonals() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (Diagonals d : walls().diagonals()) {
      rows.add(
          List.of(
              names.part(d.part()),
              between(d.corners().get(0), d.corners().get(2)) + "  " + cells.length(d.first()),
              between(d.corners().get(1), d.corners().get(3)) + "  " + cells.length(d.second()),
              off(d.difference()),
              words.small(d.allowed(), Rounding.NEAREST),
              between(d.corners().get(d.rack() > 0 ? 2 : 3), d.corners().get(d.rack() > 0 ? 3 : 2))
                  + "  "
                  + words.small(Math.abs(d.rack()), Rounding.NEAREST)));
      subjects.add(d.part());
    }
    return table(
        words.text("built.diagonals"),
        List.of("\"part", "'oneDiagonal", "'otherDiagonal", "difference", "letPass", "'rack"),
        rows,
        subjects);
  }

  private Optional<RowTable> corners() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (BuiltCorner c : walls().corners()) {
      if (walls().isTaped(c.part())) {
        rows.add(
            List.of(
                String.valueOf(c.number()),
                off(c.built().x() - c.planned().x()),
                off(c.built().y() - c.planned().y()),
                c.within() == 0 ? "" : words.small(c.within(), Rounding.UP),
                words.choice("built.hold", c.hold())));
        subjects.add(c.part());
      }
    }
    return table(
        words.text("built.corners"),
        List.of("'corner", "toRight", "upPage", "within", "\"state"),
        rows,
        subjects);
  }

  private Optional<RowTable> plates() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (PlateLevel p : walls().plates()) {
      for (PlateLevel.At c : p.corners()) {
        rows.add(
            List.of(
                String.valueOf(c.number()),
                names.part(p.part()),
                cells.length(c.reads()),
                off(c.reads() - p.planned()),
                words.small(c.shim(), Rounding.NEAREST),
                p.tilt().isPresent() ? off(c.off()) : ""));
        subjects.add(p.part());
      }
    }
    return table(
        words.text("built.plates"),
        List.of("'corner", "\"part", "height", "offPlan", "shim", "twist"),
        rows,
        subjects);
  }

  private Optional<RowTable> seats() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (TrussSeat s : check.seats()) {
      rows.add(
          List.of(
              s.mark(),
              names.run(s.run()),
              cells.length(s.station()),
              cells.length(s.span()),
              cells.length(s.apart()),
              off(s.difference()) + (s.notice() ? " *" : ""),
              s.overhangFrom().map(cells::length).orElse(""),
              s.overhangTo().map(cells::length).orElse("")));
      subjects.add(s.truss());
    }
    return table(
        words.text("built.seats"),
        List.of(
            "'mark",
            "\"run",
            "along",
            "made",
            "wallsApart",
            "difference",
            "overhang",
            "otherOverhang"),
        rows,
        subjects);
  }

  private Optional<RowTable> changes() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (Change c : check.changes()) {
      boolean area = c.kind() == Change.Kind.AREA;
      rows.add(
          List.of(
              words.choice("built.change", c.kind()),
              of(c),
              area ? words.area(c.planned()) : cells.length(c.planned()),
              area ? words.area(c.built()) : cells.length(c.built()),
              area ? words.percent(100 * (c.built() / c.planned() - 1)) : off(c.difference())));
      subjects.add(c.mark().isEmpty() ? c.subject() : c.mark());
    }
    return table(
        words.text("built.changes"),
        List.of("\"figure", "\"of", "asDrawn", "asBuilt", "difference"),
        rows,
        subjects);
  }

  private String of(Change c) {
    return switch (c.kind()) {
      case TRUSS_SPAN, TRUSS_HEIGHT -> c.mark();
      case RAFTER -> words.text("built.ofRafter", c.mark(), names.part(c.subject()));
      case VALLEY_PLACE, VALLEY_CHORD ->
          words.text("built.ofValley", c.number(), names.run(c.subject()));
      case AREA -> words.text("built.ofPlane", names.plane(c.subject()));
      case WALL -> names.wall(c.subject());
      default -> names.place(c.subject());
    };
  }
}

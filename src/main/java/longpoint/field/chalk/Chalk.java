package longpoint.field.chalk;

import java.util.ArrayList;
import java.util.List;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Inside;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.stop.CalledOff;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * Front door of this package: the chalk sheets of a deck.
 *
 * <p>A sheet stands for every plane that has something to snap. Every end lies on the plane's own
 * edge or is taped from one; figures are true lengths on the plane, in plan units, not rounded.
 */
public final class Chalk {
  private final PlaneDeck deck;
  private final Datum datum;
  private final List<ChalkLine> lines = new ArrayList<>();
  private final List<SquareCheck> square = new ArrayList<>();

  private Chalk(PlaneDeck deck) {
    this.deck = deck;
    this.datum = Datum.of(deck);
  }

  /** The sheets of a plan's deck and frame. */
  public static List<ChalkSheet> sheets(Plan plan, FramingSet framing, DeckPlan deck) {
    SiteLines site = new SiteLines(plan);
    return sheets(deck, site.lookouts(framing, deck), site.overbuilds(framing));
  }

  /** Sheets in the order of the planes; a plane with nothing to snap has none. */
  public static List<ChalkSheet> sheets(
      DeckPlan plan, List<Lookouts> lookouts, List<Overbuild> overbuilds) {
    List<ChalkSheet> sheets = new ArrayList<>();
    for (PlaneDeck deck : plan.planes()) {
      CalledOff.check();
      Chalk chalk = new Chalk(deck);
      lookouts.stream().filter(l -> deck.planes().contains(l.plane())).forEach(chalk::lookouts);
      chalk.courses();
      chalk.squareCourses();
      overbuilds.stream().filter(o -> deck.planes().contains(o.plane())).forEach(chalk::overbuild);
      if (!chalk.lines.isEmpty()) {
        sheets.add(new ChalkSheet(deck.plane(), chalk.datum, chalk.lines, chalk.square));
      }
    }
    return sheets;
  }

  private void lookouts(Lookouts rake) {
    Segment line = rake.rake();
    boolean atLeft = line.middle().x() < middle();
    int number = 0;
    for (double v : rake.marks()) {
      double u = line.from().x();
      double out = atLeft ? u + rake.wall() : u - rake.wall();
      double in = atLeft ? u + rake.reach() : u - rake.reach();
      add(
          ChalkLine.Kind.LOOKOUT,
          Phrase.of("field.chalk.lookout", ++number),
          new Point(Math.min(out, in), v),
          new Point(Math.max(out, in), v));
    }
  }

  private double middle() {
    Bounds all = Bounds.EMPTY;
    for (Region region : deck.ground()) {
      all = all.with(region.shell().bounds());
    }
    return all.middle().x();
  }

  /** The upper edge of every course but the last, which ends at the top of the plane. */
  private void courses() {
    for (int i = 0; i + 1 < deck.courses().size(); i++) {
      double v = deck.courses().get(i).to();
      int course = deck.courses().get(i).number();
      for (Region region : deck.ground()) {
        Bounds box = region.shell().bounds().grown(1);
        Segment across = new Segment(new Point(box.minX(), v), new Point(box.maxX(), v));
        for (Segment run : Inside.of(region, across)) {
          add(ChalkLine.Kind.COURSE, Phrase.of("field.chalk.course", course), run.from(), run.to());
        }
      }
    }
  }

  private void squareCourses() {
    List<ChalkLine> courses =
        lines.stream().filter(l -> l.kind() == ChalkLine.Kind.COURSE).toList();
    SquareCheck.of(deck, datum, courses).ifPresent(square::add);
  }

  private void overbuild(Overbuild over) {
    int first = lines.size();
    add(
        ChalkLine.Kind.CENTRE,
        Phrase.of("field.chalk.centre", over.name()),
        toEdge(onDeck(over.centre())));
    for (Segment line : over.setLines()) {
      Phrase label = hand(over, line, "field.chalk.set.left", "field.chalk.set.right");
      add(ChalkLine.Kind.SET, label, toEdge(onDeck(line)));
    }
    int number = 0;
    for (Segment bearing : over.bearings()) {
      Segment at = onDeck(bearing);
      number++;
      add(ChalkLine.Kind.BEARING, Phrase.of("field.chalk.bearing", over.name(), number), at);
      Point down = downhill(at).times(over.thickness());
      add(
          ChalkLine.Kind.STOP,
          Phrase.of("field.chalk.stop", number),
          at.from().plus(down),
          at.to().plus(down));
    }
    for (Segment line : over.sheetLines()) {
      Phrase label = hand(over, line, "field.chalk.sheet.left", "field.chalk.sheet.right");
      add(ChalkLine.Kind.SHEET, label, toEdge(onDeck(line)));
    }
    SquareCheck.of(lines.subList(first, lines.size())).ifPresent(square::add);
  }

  /** Which of two lines it is, facing the plane from the ground. */
  private Phrase hand(Overbuild over, Segment line, String left, String right) {
    double centre = onDeck(over.centre()).middle().x();
    return Phrase.of(onDeck(line).middle().x() < centre ? left : right, over.name());
  }

  /**
   * A line that ends over the fascia arris, carried on down to the deck's lower edge, which stands
   * out past the arris by a share of the deck's thickness: an end on an edge is found with one
   * tape.
   */
  private Segment toEdge(Segment line) {
    Point foot = line.from().y() <= line.to().y() ? line.from() : line.to();
    Point head = foot == line.from() ? line.to() : line.from();
    boolean near = foot.y() > 0 && foot.y() <= PAST_ARRIS * deck.panel().thickness();
    return near ? new Segment(head.toward(foot, head.y() / (head.y() - foot.y())), head) : line;
  }

  /** In deck thicknesses: the tangent of the steepest slope anybody walks, and then some. */
  private static final double PAST_ARRIS = 3;

  /** One unit square to a line of the plane, toward the fascia. */
  private static Point downhill(Segment line) {
    Point left = line.direction().left();
    return left.y() > 0 ? left.times(-1) : left;
  }

  private Segment onDeck(Segment plan) {
    double thickness = deck.panel().thickness();
    return new Segment(
        deck.unfold().flatOnDeck(plan.from(), thickness),
        deck.unfold().flatOnDeck(plan.to(), thickness));
  }

  private void add(ChalkLine.Kind kind, Worded label, Segment line) {
    add(kind, label, line.from(), line.to());
  }

  private void add(ChalkLine.Kind kind, Worded label, Point from, Point to) {
    Point a = datum.taped(from);
    Point b = datum.taped(to);
    // Level lines start at the end nearer the corner they are taped from; others at their foot.
    boolean asIs = a.y() == b.y() ? a.x() <= b.x() : a.y() < b.y();
    lines.add(new ChalkLine(kind, label, asIs ? a : b, asIs ? b : a));
  }
}

package longpoint.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Backdrop;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;

/** Finds which of the user's own notes and dimensions the pointer is on. */
public final class MarkupPicker {
  /**
   * Lettering keeps its size on the screen, and so does the pointer's reach: a reach is ten pixels
   * and a capital of a note 2 1/2 mm, which a plain screen shows a shade higher than that.
   */
  private static final double CAPITAL = 1.05;

  /** Length of a letter over the height of a capital, on the average of lower case text. */
  private static final double LETTER = 0.78;

  private static final double LINE = 1.6;

  private MarkupPicker() {}

  /** A note or dimension within reach; notes first, then the nearest dimension. */
  static Optional<Ref> pick(Plan plan, Point at, double reach) {
    Markup markup = plan.markup();
    Optional<Ref> note =
        markup.notes().stream()
            .filter(n -> on(n, at, reach))
            .reduce((a, b) -> b)
            .map(n -> new Ref.OfNote(n.id()));
    return note.or(
        () ->
            markup.dimensions().stream()
                .filter(d -> distance(d, plan, at) <= reach)
                .min(Comparator.comparingDouble(d -> distance(d, plan, at)))
                .map(d -> new Ref.OfDimension(d.id())));
  }

  /** The picture, where it shows and is not locked. */
  static Optional<Ref> backdrop(Plan plan, Point at) {
    return plan.markup()
        .backdrop()
        .filter(u -> u.state() == Backdrop.State.LOOSE && u.covers(at))
        .map(u -> new Ref.OfBackdrop());
  }

  /** Notes whose words start in a box, and dimensions whose line lies in it. */
  static Stream<Ref> inside(Plan plan, Bounds box) {
    Stream<Ref> notes =
        plan.markup().notes().stream()
            .filter(n -> box.contains(n.at()))
            .map(n -> new Ref.OfNote(n.id()));
    Stream<Ref> dimensions =
        plan.markup().dimensions().stream()
            .filter(
                d ->
                    d.line(plan)
                        .filter(s -> box.contains(s.from()) && box.contains(s.to()))
                        .isPresent())
            .map(d -> new Ref.OfDimension(d.id()));
    return Stream.concat(notes, dimensions);
  }

  private static boolean on(Note note, Point at, double reach) {
    return words(note, reach).contains(at)
        || note.pointsAt().filter(p -> new Segment(note.at(), p).distance(at) <= reach).isPresent();
  }

  /**
   * About where the words of a note stand.
   *
   * @param reach of the pointer, which stands for the size of lettering at the present zoom
   */
  public static Bounds words(Note note, double reach) {
    List<String> lines = note.lines();
    int longest = lines.stream().mapToInt(String::length).max().orElse(1);
    double capital = CAPITAL * reach;
    double width = Math.max(1, longest) * LETTER * capital + capital / 2;
    double left = note.endsAtLeader() ? note.at().x() - width : note.at().x();
    double low = note.at().y() - capital - (lines.size() - 1) * LINE * capital;
    return new Bounds(left, low, left + width, note.at().y() + capital);
  }

  private static double distance(PlanDimension d, Plan plan, Point at) {
    return d.line(plan).map(s -> s.distance(at)).orElse(Double.POSITIVE_INFINITY);
  }
}

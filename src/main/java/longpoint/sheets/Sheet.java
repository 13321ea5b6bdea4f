package longpoint.sheets;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.drawing.Mark;

/**
 * One sheet before it has a number.
 *
 * @param title such as Roof plan
 * @param view what its drawing shows
 * @param scale of its drawing; none for tables and drawings without one
 * @param measures what its lengths are lengths of; may be empty
 * @param leftOff figures and labels that had no room
 * @param reminders what can hurt the crew at the work it is for
 * @param marks between border, reminders and title block, millimetres of paper
 */
record Sheet(
    String title,
    View view,
    Optional<PaperScale> scale,
    String measures,
    int leftOff,
    List<String> reminders,
    List<Mark> marks) {
  /** What a drawing shows. */
  enum View {
    /** The building from above, so that north has a direction. */
    PLAN,
    /** Anything else. */
    OTHER
  }

  Sheet {
    Objects.requireNonNull(title);
    Objects.requireNonNull(measures);
    reminders = List.copyOf(reminders);
    marks = List.copyOf(marks);
  }

  /** A drawing of the building from above. */
  static Sheet plan(
      String title,
      PaperScale scale,
      String measures,
      int leftOff,
      List<String> reminders,
      List<Mark> marks) {
    return new Sheet(title, View.PLAN, Optional.of(scale), measures, leftOff, reminders, marks);
  }

  /** Drawings that are not the building from above. */
  static Sheet figures(
      String title, PaperScale scale, String measures, List<String> reminders, List<Mark> marks) {
    return new Sheet(title, View.OTHER, Optional.of(scale), measures, 0, reminders, marks);
  }

  /** Tables and words. */
  static Sheet tables(String title, String measures, List<String> reminders, List<Mark> marks) {
    return new Sheet(title, View.OTHER, Optional.empty(), measures, 0, reminders, marks);
  }
}

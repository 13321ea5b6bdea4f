package longpoint.drawing;

import java.util.List;
import java.util.Objects;

/**
 * Marks in real size: what a CAD file holds and the canvas shows.
 *
 * @param title of what is shown
 * @param marks in the order they are painted
 */
public record Drawing(String title, List<Mark> marks) {
  public Drawing {
    Objects.requireNonNull(title);
    marks = List.copyOf(marks);
  }

  /** Hands every mark to an output, in order. */
  public void accept(MarkVisitor visitor) {
    marks.forEach(m -> m.accept(visitor));
  }
}

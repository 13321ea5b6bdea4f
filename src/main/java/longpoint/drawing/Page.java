package longpoint.drawing;

import java.util.List;
import java.util.Objects;

/**
 * One sheet of paper. Coordinates of its marks are millimetres from the lower left corner; drawings
 * in real size stand on it as groups with a placement.
 *
 * @param number of the sheet, such as R-1
 * @param title of the sheet
 * @param widthMm &gt; 0
 * @param heightMm &gt; 0
 */
public record Page(String number, String title, double widthMm, double heightMm, List<Mark> marks) {
  public Page {
    Objects.requireNonNull(number);
    Objects.requireNonNull(title);
    marks = List.copyOf(marks);
  }
}

package longpoint.drawing;

import java.util.Objects;

/**
 * Width and type of a line on paper.
 *
 * @param widthMm one of the standard widths, &gt; 0
 */
public record Pen(double widthMm, LineType type) {
  /** Line types of drawing practice. */
  public enum LineType {
    CONTINUOUS,
    DASHED,
    /** Long dash, dot: centre lines. */
    CHAIN,
    DOTTED
  }

  public Pen {
    Objects.requireNonNull(type);
    if (!(widthMm > 0)) {
      throw new IllegalArgumentException("a pen needs a width");
    }
  }

  public static Pen solid(double widthMm) {
    return new Pen(widthMm, LineType.CONTINUOUS);
  }

  public static Pen dashed(double widthMm) {
    return new Pen(widthMm, LineType.DASHED);
  }
}

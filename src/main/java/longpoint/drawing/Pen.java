package longpoint.drawing;

import java.util.Arrays;
import java.util.List;
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
    DASHED(3, 1.5),
    LONG_DASHED(9, 2),
    /** Long dash, dot: centre lines. */
    CHAIN(8, 1.5, 0.5, 1.5),
    DOTTED(0.5, 1);

    private final List<Double> pattern;

    LineType(double... pattern) {
      this.pattern = Arrays.stream(pattern).boxed().toList();
    }

    /** Stroke, gap, stroke, gap … on paper, in millimetres; empty for an unbroken line. */
    public List<Double> patternMm() {
      return pattern;
    }
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

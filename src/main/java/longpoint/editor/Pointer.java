package longpoint.editor;

import java.util.Objects;
import java.util.Set;
import longpoint.geometry.Point;

/**
 * Where the user points.
 *
 * @param at in plan coordinates
 * @param reach how near counts as on, in plan units, &gt; 0: a few pixels at the present zoom
 * @param held keys held down
 */
public record Pointer(Point at, double reach, Set<Modifier> held) {
  public Pointer {
    Objects.requireNonNull(at);
    held = Set.copyOf(held);
    if (!(reach > 0) || Double.isInfinite(reach)) {
      throw new IllegalArgumentException("reach must be positive and finite, not " + reach);
    }
  }

  public Pointer(double x, double y, double reach, Modifier... held) {
    this(new Point(x, y), reach, Set.of(held));
  }

  public boolean holds(Modifier modifier) {
    return held.contains(modifier);
  }
}

package longpoint.desktop;

import java.util.Objects;
import longpoint.drawing.Drawing;
import longpoint.pipeline.Design;

/**
 * What the engine hands the window: the figures and the marks that show them.
 *
 * @param unitsPerMm plan units to a millimetre of the lettering the marks are laid out for, &gt; 0
 */
public record Picture(Design design, Drawing drawing, double unitsPerMm) {
  public Picture {
    Objects.requireNonNull(design);
    Objects.requireNonNull(drawing);
  }
}

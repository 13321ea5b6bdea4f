package longpoint.desktop;

import java.util.Objects;
import longpoint.drawing.Drawing;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.pipeline.Design;

/**
 * What the engine hands the window: the figures and the marks that show them.
 *
 * @param unitsPerMm plan units to a millimetre of the lettering the marks are laid out for, &gt; 0
 * @param extent box around all marks, lettering included, in plan units
 */
public record Picture(Design design, Drawing drawing, double unitsPerMm, Bounds extent) {
  public Picture {
    Objects.requireNonNull(design);
    Objects.requireNonNull(drawing);
    Objects.requireNonNull(extent);
  }

  /** Measures the marks, which takes a moment: for the engine's thread. */
  static Picture of(Design design, Drawing drawing, double unitsPerMm) {
    Bounds extent = Strokes.of(drawing.marks(), unitsPerMm).bounds();
    return new Picture(design, drawing, unitsPerMm, extent);
  }
}

package longpoint.desktop;

import java.util.Objects;
import longpoint.drawing.Drawing;
import longpoint.pipeline.Design;

/** What the engine hands the window: the figures and the marks that show them. */
public record Picture(Design design, Drawing drawing) {
  public Picture {
    Objects.requireNonNull(design);
    Objects.requireNonNull(drawing);
  }
}

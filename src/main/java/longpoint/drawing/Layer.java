package longpoint.drawing;

import java.util.Objects;

/**
 * What a mark shows, with the pen it is drawn by: a layer in DXF, a group in SVG, a row in the list
 * of layers on screen.
 *
 * @param name as a CAD program lists it: letters, digits and hyphens
 * @param title as people read it
 * @param pen how its lines are drawn
 * @param ink what colour family
 */
public record Layer(String name, String title, Pen pen, Ink ink) {
  public Layer {
    Objects.requireNonNull(title);
    Objects.requireNonNull(pen);
    Objects.requireNonNull(ink);
    if (!name.matches("[A-Z0-9-]+")) {
      throw new IllegalArgumentException("not a layer name: " + name);
    }
  }
}

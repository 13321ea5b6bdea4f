package longpoint.desktop.canvas;

import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;

/**
 * Who draws with the pointer: takes what is left when the sheet has had its panning and zooming.
 */
public interface Gestures {
  /** The pointer moved, or the main button did something. */
  void pointer(MouseEvent event, View view);

  /**
   * A key went down, or a character was typed, with the sheet in focus.
   *
   * @return whether it meant something here
   */
  boolean key(KeyEvent event);

  /** Whether figures are being typed, so that even a space is one of their characters. */
  boolean typing();

  /** Whether something is being drawn or dragged. */
  boolean engaged();

  /** The second button was pressed. */
  void menu(MouseEvent event, View view);
}

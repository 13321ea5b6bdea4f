package longpoint.desktop.canvas;

import java.awt.Cursor;

/** Something looked at under a {@link View} that can be moved and zoomed. */
public interface Movable {
  View view();

  void show(View view);

  void setCursor(Cursor cursor);

  /** The pointer's shape when nothing is being moved. */
  void restoreCursor();
}

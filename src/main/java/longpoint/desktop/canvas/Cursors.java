package longpoint.desktop.canvas;

import java.awt.Cursor;
import longpoint.editor.PointerShape;

/** The platform's cursors for what the editor says of the pointer. */
public final class Cursors {
  private Cursors() {}

  public static Cursor of(PointerShape shape) {
    return Cursor.getPredefinedCursor(
        switch (shape) {
          case ARROW -> Cursor.DEFAULT_CURSOR;
          case CROSS -> Cursor.CROSSHAIR_CURSOR;
          case HAND -> Cursor.HAND_CURSOR;
          case MOVE -> Cursor.MOVE_CURSOR;
          case ACROSS -> Cursor.E_RESIZE_CURSOR;
          case UP -> Cursor.N_RESIZE_CURSOR;
          case RISING -> Cursor.NE_RESIZE_CURSOR;
          case FALLING -> Cursor.NW_RESIZE_CURSOR;
          case WORDS -> Cursor.TEXT_CURSOR;
        });
  }
}

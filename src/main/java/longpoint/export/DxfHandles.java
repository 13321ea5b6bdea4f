package longpoint.export;

/**
 * Handles of the fixed things in a DXF file, and the count for the rest. A handle names an object
 * once in the file; nought names nothing.
 */
final class DxfHandles {
  static final int ROOT = 0x01;
  static final int GROUPS = 0x02;
  static final int LAYOUTS = 0x03;
  static final int MLINE_STYLES = 0x04;
  static final int PLOT_SETTINGS = 0x05;
  static final int PLOT_STYLES = 0x06;
  static final int PLOT_STYLE_NORMAL = 0x07;
  static final int MLINE_STANDARD = 0x08;
  static final int MODEL_LAYOUT = 0x09;
  static final int PAPER_LAYOUT = 0x0A;
  static final int MODEL_SPACE = 0x0B;
  static final int PAPER_SPACE = 0x0C;

  private static final int FIRST_FREE = 0x20;

  private int next = FIRST_FREE;

  int take() {
    return next++;
  }

  /** The one the next object would get: {@code $HANDSEED}. */
  int next() {
    return next;
  }
}

package longpoint.desktop.canvas;

import java.util.Optional;

/** Is told what has been clicked. */
@FunctionalInterface
public interface PickListener {
  /** What the click asks for. */
  enum How {
    /** This and nothing else. */
    ALONE,
    /** This too, or no longer this. */
    TOO,
    /** The whole part it belongs to. */
    WHOLE_PART
  }

  /**
   * @param subject id of what was clicked; empty for the ground
   */
  void picked(Optional<String> subject, How how);
}

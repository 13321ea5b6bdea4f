package longpoint.cli;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the window, which the command line itself knows nothing of. */
@FunctionalInterface
public interface WindowDoor {
  /**
   * @param plan to open in it, or empty for a new one
   * @return empty when the window is open, else one sentence that says why it cannot be
   */
  Optional<String> open(Optional<Path> plan);
}

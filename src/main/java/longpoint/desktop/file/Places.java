package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.Locale;

/** Where the platform keeps what programs leave for themselves. */
public final class Places {
  private Places() {}

  /** The folder for drafts of unsaved plans. */
  public static Path drafts() {
    return of(
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT),
            System.getenv("LOCALAPPDATA"),
            System.getenv("XDG_STATE_HOME"),
            Path.of(System.getProperty("user.home", ".")))
        .resolve("drafts");
  }

  /**
   * The same for a system that is told.
   *
   * @param appData folder of Windows, may be null
   * @param state folder of the XDG base directory specification, may be null
   */
  static Path of(String system, String appData, String state, Path home) {
    if (system.contains("windows")) {
      return (appData == null ? home : Path.of(appData)).resolve("Longpoint");
    }
    if (system.contains("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Longpoint");
    }
    return (state == null || state.isBlank() ? home.resolve(".local/state") : Path.of(state))
        .resolve("longpoint");
  }
}

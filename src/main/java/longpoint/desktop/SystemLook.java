package longpoint.desktop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Whether the desktop is light or dark, asked of the platform's own tools: the registry of Windows,
 * the defaults of macOS, the settings of a free desktop. Java has no word for it.
 */
final class SystemLook {
  private static final long PATIENCE_SECONDS = 2;

  private SystemLook() {}

  /** Asks this platform; empty when it does not say. Runs off the event thread. */
  static Optional<Theme> ask() {
    return question(System.getProperty("os.name", "")).flatMap(SystemLook::answer);
  }

  /** The command that tells on a system. */
  static Optional<List<String>> question(String system) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.contains("windows")) {
      return Optional.of(
          List.of(
              "reg",
              "query",
              "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
              "/v",
              "AppsUseLightTheme"));
    }
    if (name.contains("mac")) {
      return Optional.of(List.of("defaults", "read", "-g", "AppleInterfaceStyle"));
    }
    return Optional.of(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"));
  }

  /** What the command's words mean; on a light Mac there is no such value, and it says so. */
  static Optional<Theme> meaning(String words) {
    String low = words.toLowerCase(Locale.ROOT);
    if (low.contains("appsuselighttheme")) {
      return Optional.of(low.contains("0x0") ? Theme.DARK : Theme.LIGHT);
    }
    if (low.contains("dark")) {
      return Optional.of(Theme.DARK);
    }
    if (low.contains("default") || low.contains("light") || low.contains("does not exist")) {
      return Optional.of(Theme.LIGHT);
    }
    return Optional.empty();
  }

  private static Optional<Theme> answer(List<String> command) {
    try {
      Process asked = new ProcessBuilder(command).redirectErrorStream(true).start();
      if (!asked.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        asked.destroy();
        return Optional.empty();
      }
      String words = new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return meaning(words);
    } catch (IOException e) {
      return Optional.empty(); // no such tool here
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }
}

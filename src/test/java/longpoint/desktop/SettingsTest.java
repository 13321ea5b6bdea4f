package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.UUID;
import java.util.prefs.Preferences;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the window remembers is known at once, and kept when it closes. */
class SettingsTest {
  private final Preferences kept =
      Preferences.userRoot().node("longpoint-test-" + UUID.randomUUID());

  @AfterEach
  void forget() throws Exception {
    kept.removeNode();
  }

  @Test
  void whatIsSetIsKnownAtOnceAndKeptAfterwards() {
    Settings settings = new Settings(kept);
    assertThat(settings.window()).isEmpty();
    settings.setWindow(new Rectangle(1, 2, 1000, 700));
    settings.setTheme(Theme.DARK);
    for (int i = 0; i < 10; i++) {
      settings.addRecent(Path.of("plans", i + ".json"));
    }
    assertThat(settings.window()).contains(new Rectangle(1, 2, 1000, 700));
    settings.close();
    Settings next = new Settings(kept);
    assertThat(next.window()).contains(new Rectangle(1, 2, 1000, 700));
    assertThat(next.theme()).isEqualTo(Theme.DARK);
    assertThat(next.recent()).isEqualTo(settings.recent()).hasSize(8);
    assertThat(next.recent().get(0)).endsWithRaw(Path.of("9.json"));
  }

  @Test
  void whatIsSetTooLateDoesNoHarm() {
    Settings settings = new Settings(kept);
    settings.close();
    settings.setTextSize(18);
    assertThat(settings.textSize()).isEqualTo(18);
    assertThat(new Settings(kept).textSize()).isEqualTo(15);
  }
}

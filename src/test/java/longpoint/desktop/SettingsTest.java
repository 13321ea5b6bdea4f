package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.prefs.Preferences;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.view.Showing;
import longpoint.packet.Packet;
import longpoint.sheets.Paper;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the window remembers, where the platform keeps such things. */
class SettingsTest {
  private final Preferences node =
      Preferences.userRoot().node("longpoint-test-" + UUID.randomUUID());

  @AfterEach
  void forget() throws Exception {
    node.removeNode();
  }

  @Test
  void everythingIsThereAtTheNextStart() {
    Settings today = new Settings(node);
    today.setTheme(Theme.DARK);
    today.setFollowing(false);
    today.setMaximised(true);
    today.setTextSize(18);
    today.setWindow(new Rectangle(10, 20, 1200, 800));
    today.setBesideShown(true);
    today.setBesideBelow(true);
    today.setBeside(Showing.LISTS);
    today.setSolidLayers(Set.of(SolidLayer.DECK, SolidLayer.ROOF));
    today.setSheetShare(0.37);
    today.setPaper(LengthUnit.INCH, Paper.LETTER);
    today.addRecent(Path.of("/plans/one.json"));
    today.addRecent(Path.of("/plans/two.json"));
    today.close();

    Settings tomorrow = new Settings(node);
    assertThat(tomorrow.theme()).isEqualTo(Theme.DARK);
    assertThat(tomorrow.following()).isFalse();
    assertThat(tomorrow.maximised()).isTrue();
    assertThat(tomorrow.textSize()).isEqualTo(18);
    assertThat(tomorrow.window()).contains(new Rectangle(10, 20, 1200, 800));
    assertThat(tomorrow.besideShown()).isTrue();
    assertThat(tomorrow.besideBelow()).isTrue();
    assertThat(tomorrow.beside()).isEqualTo(Showing.LISTS);
    assertThat(tomorrow.solidLayers()).containsExactlyInAnyOrder(SolidLayer.DECK, SolidLayer.ROOF);
    assertThat(tomorrow.sheetShare()).contains(0.37);
    assertThat(tomorrow.paper(LengthUnit.INCH)).isEqualTo(Paper.LETTER);
    assertThat(tomorrow.paper(LengthUnit.MILLIMETRE))
        .isEqualTo(Packet.paperFor(LengthUnit.MILLIMETRE));
    assertThat(tomorrow.recent())
        .isEqualTo(List.of(Path.of("/plans/two.json"), Path.of("/plans/one.json")));
  }

  @Test
  void nonsenseIsPassedOver() {
    for (String key :
        List.of(
            "theme", "followDesktop", "maximised", "textSize", "window", "solid", "besideBelow")) {
      node.put(key, "?,;\"");
    }
    for (String key : List.of("beside", "solidLayers", "sheetShare", "paper.INCH", "recent0")) {
      node.put(key, "\u0001nonsense");
    }
    Settings read = new Settings(node);
    assertThat(read.theme()).isEqualTo(Theme.LIGHT);
    assertThat(read.textSize()).isEqualTo(15);
    assertThat(read.window()).isEmpty();
    assertThat(read.besideShown()).isFalse();
    assertThat(read.beside()).isEqualTo(Showing.HOUSE);
    assertThat(read.solidLayers()).isEmpty();
    assertThat(read.sheetShare()).isEmpty();
    assertThat(read.paper(LengthUnit.INCH)).isEqualTo(Paper.TABLOID);
    assertThat(read.recent()).hasSizeLessThanOrEqualTo(1);
  }

  @Test
  void aPlaceThatIsGoneLosesTheMemoryOnly() throws Exception {
    Preferences gone = Preferences.userRoot().node("longpoint-test-" + UUID.randomUUID());
    Settings settings = new Settings(gone);
    gone.removeNode();
    settings.setTextSize(20);
    settings.close();
    assertThat(settings.textSize()).isEqualTo(20);
    assertThat(new Settings(gone).textSize()).isEqualTo(15);
  }
}

package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import longpoint.editor.Houses;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Buying;
import longpoint.plan.Deck;
import longpoint.plan.EdgeKind;
import longpoint.plan.SpanRating;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Choices about what is bought and where sheets begin, made in the side panel. */
class BuyingWindowTest {
  private WindowDriver window;

  @BeforeEach
  void open() {
    window = new WindowDriver(Houses.house());
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void press(String button) {
    AbstractButton found = window.find(button, AbstractButton.class);
    WindowDriver.onEvents(
        () -> {
          found.doClick();
          return null;
        });
    window.untilSolved();
  }

  @Test
  void whatIsBoughtIsChosenInThePanel() {
    press("fold.buying");
    press("fold.boards");
    window.fill("roofingWaste", "12,5 %").untilSolved();
    window.fill("nailField", "8\"").untilSolved();
    window.fill("boardLengths", "10'; 16'").untilSolved();
    press("rating.s24_0");
    press("vent.one_in_300");
    Buying buying = window.plan().buying();
    assertThat(buying.roofingWaste()).isEqualTo(0.125);
    assertThat(buying.nails()).isEqualTo(new Buying.Nails(6, 8));
    assertThat(buying.boards().lengths()).isEqualTo(List.of(120.0, 192.0));
    assertThat(buying.rating()).isEqualTo(SpanRating.S24_0);
    assertThat(window.design().takeOff().vents().share()).isEqualTo(Buying.Vent.ONE_IN_300);
    window.fill("roofingWaste", "").untilSolved();
    assertThat(window.plan().buying().roofingWaste()).isEqualTo(0.08);
  }

  @Test
  void aSideSaysWhereItsSheetsBegin() {
    String part = window.plan().parts().get(0).id();
    int side = 0;
    while (window.plan().parts().get(0).edges().get(side).kind() != EdgeKind.EAVE) {
      side++;
    }
    Ref eave = Ref.side(part, side);
    WindowDriver.onEvents(
        () -> {
          window.window().job().runner().select(Selection.of(eave));
          return null;
        });
    window.untilSolved();
    press("sheetStart.centre");
    assertThat(window.plan().parts().get(0).edges().get(side).start())
        .isEqualTo(Optional.of(Deck.Start.CENTRE));
    press("sheetStart.part");
    assertThat(window.plan().parts().get(0).edges().get(side).start()).isEmpty();
  }
}

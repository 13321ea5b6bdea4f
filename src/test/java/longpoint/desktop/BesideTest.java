package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.solid.SolidView;
import longpoint.desktop.solid.Stand;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The house beside the sheet, worked by hand: shown, turned, picked from, and put away. */
class BesideTest {
  private WindowDriver window;
  private SolidView view;

  @BeforeEach
  void open() throws Exception {
    window =
        new WindowDriver(PlanFile.read(Path.of("sample-plans", "heronsmere-lodge.json")).plan());
    window.menu("beside.house");
    view = window.find("solid", SolidView.class);
    WindowDriver.until("the house shows", () -> view.isShowing() && view.getWidth() > 100);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  @Test
  void oneKeyShowsTheHouseAndPutsItAwayAndItIsRemembered() {
    assertThat(window.window().settings().besideShown()).isTrue();
    assertThat(WindowDriver.onEvents(() -> window.window().canvas().isShowing())).isTrue();
    window.type("v");
    assertThat(WindowDriver.onEvents(view::isShowing)).isFalse();
    assertThat(window.window().settings().besideShown()).isFalse();
    assertThat(view.getAccessibleContext().getAccessibleName()).isNotBlank();
  }

  @Test
  void aClickOnTheHousePicksTheSideOnTheSheet() {
    java.awt.Point roof = placeOfAny();
    String subject = WindowDriver.onEvents(() -> view.at(roof.x, roof.y)).orElseThrow();
    click(roof, 1, 0);
    Selection picked = window.window().job().document().selection();
    assertThat(picked.refs()).hasSize(1);
    Ref.OfSide side = (Ref.OfSide) picked.refs().get(0);
    assertThat(side.part() + "/" + side.side()).isEqualTo(subject);
    click(roof, 2, 0);
    assertThat(window.window().job().document().selection())
        .isEqualTo(Selection.of(Ref.part(side.part())));
    click(new java.awt.Point(2, 2), 1, 0);
    assertThat(window.window().job().document().selection().isEmpty()).isTrue();
  }

  @Test
  void whatIsPickedOnTheSheetStandsOutOnTheHouse() {
    BufferedImage plain = picture();
    String part = window.plan().parts().get(0).id();
    WindowDriver.onEvents(
        () -> {
          window.window().job().runner().select(Selection.of(Ref.part(part)));
          return null;
        });
    assertThat(pixelsThatDiffer(plain, picture())).isGreaterThan(1000);
  }

  @Test
  void draggingAndArrowKeysTurnItAndNamedViewsHaveTheirKeys() {
    Stand start = WindowDriver.onEvents(view::stand);
    WindowDriver.onEvents(
        () -> {
          send(MouseEvent.MOUSE_PRESSED, 100, 100, InputEvent.BUTTON1_DOWN_MASK, 1);
          send(MouseEvent.MOUSE_DRAGGED, 160, 80, InputEvent.BUTTON1_DOWN_MASK, 0);
          send(MouseEvent.MOUSE_RELEASED, 160, 80, 0, 1);
          return null;
        });
    Stand dragged = WindowDriver.onEvents(view::stand);
    assertThat(dragged.turn()).isGreaterThan(start.turn());
    assertThat(dragged.tilt()).isLessThan(start.tilt());
    assertThat(window.window().job().document().selection().isEmpty()).isTrue();
    key(KeyEvent.VK_LEFT);
    assertThat(WindowDriver.onEvents(view::stand).turn()).isLessThan(dragged.turn());
    window.menu("solid.from.front");
    Stand front = WindowDriver.onEvents(view::stand);
    assertThat(front.turn()).isZero();
    assertThat(front.tilt()).isZero();
  }

  @Test
  void roofWallsAndFrameAreSwitchedAndRemembered() {
    BufferedImage whole = picture();
    window.push("solid.solid.show.roof");
    assertThat(pixelsThatDiffer(whole, picture())).isGreaterThan(1000);
    window.push("solid.solid.show.frame");
    assertThat(window.window().settings().solidLayers())
        .containsExactlyInAnyOrder(SolidLayer.WALLS, SolidLayer.FRAME);
    assertThat(
            WindowDriver.onEvents(
                () -> window.find("solid.solid.show.roof", AbstractButton.class).isSelected()))
        .isFalse();
  }

  @Test
  void theHouseFollowsThePlan() {
    BufferedImage before = picture();
    List<Part> parts = new ArrayList<>();
    for (Part part : window.plan().parts()) {
      parts.add(part.withPlateHeight(part.plateHeight() * 2));
    }
    Plan tall = window.plan().withParts(parts);
    WindowDriver.onEvents(
        () -> {
          window.window().job().open(tall, Optional.empty(), List.of());
          return null;
        });
    window.untilSolved();
    assertThat(pixelsThatDiffer(before, picture())).isGreaterThan(1000);
  }

  /** A place where the house is seen: found along the middle row. */
  private java.awt.Point placeOfAny() {
    return WindowDriver.onEvents(
        () -> {
          int y = view.getHeight() / 2;
          for (int x = view.getWidth() / 2; x < view.getWidth(); x++) {
            if (view.at(x, y).isPresent()) {
              return new java.awt.Point(x, y);
            }
          }
          throw new AssertionError("no house in the middle of the view");
        });
  }

  private void click(java.awt.Point at, int count, int held) {
    WindowDriver.onEvents(
        () -> {
          send(MouseEvent.MOUSE_PRESSED, at.x, at.y, InputEvent.BUTTON1_DOWN_MASK | held, count);
          send(MouseEvent.MOUSE_RELEASED, at.x, at.y, held, count);
          return null;
        });
  }

  private void send(int id, int x, int y, int held, int count) {
    view.dispatchEvent(new MouseEvent(view, id, 0, held, x, y, count, false, MouseEvent.BUTTON1));
  }

  private void key(int code) {
    WindowDriver.onEvents(
        () -> {
          java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager()
              .redispatchEvent(
                  view,
                  new KeyEvent(view, KeyEvent.KEY_PRESSED, 0, 0, code, KeyEvent.CHAR_UNDEFINED));
          return null;
        });
  }

  private BufferedImage picture() {
    return WindowDriver.onEvents(
        () -> {
          BufferedImage image =
              new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
          view.paint(image.getGraphics());
          return image;
        });
  }

  private static int pixelsThatDiffer(BufferedImage a, BufferedImage b) {
    int count = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        count += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
      }
    }
    return count;
  }
}

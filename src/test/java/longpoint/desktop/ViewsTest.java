package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import longpoint.desktop.canvas.DrawingCanvas;
import longpoint.desktop.canvas.PickListener.How;
import longpoint.desktop.paper.PageView;
import longpoint.desktop.view.Showing;
import longpoint.drawing.Page;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.framing.truss.Truss;
import longpoint.packet.Packet;
import longpoint.planfile.PlanFile;
import longpoint.units.LengthEntry;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The views beside the plan, chosen, worked and picked from in the real window. */
class ViewsTest {
  private WindowDriver window;

  @BeforeEach
  void open() throws Exception {
    window = new WindowDriver(PlanFile.read(Path.of("sample-plans", "tolverby-cabin.json")).plan());
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void pick(String id) {
    WindowDriver.onEvents(
        () -> {
          window.window().picks().pick(Optional.of(id), How.ALONE);
          return null;
        });
  }

  @Test
  void everyViewHasAButtonAndAKeyAndIsRemembered() {
    for (Showing one : Showing.values()) {
      window.menu("beside." + one.key());
      assertThat(window.window().beside().shows(one)).isTrue();
      assertThat(window.window().settings().beside()).isEqualTo(one);
      assertThat(window.window().catalogue().task("beside." + one.key()).key()).isPresent();
      assertThat(
              WindowDriver.onEvents(
                  () ->
                      window.find("beside.beside." + one.key(), JToggleButton.class).isSelected()))
          .isTrue();
    }
    window.menu("beside.lists");
    assertThat(window.window().beside().isShown()).isFalse();
    window.type("v");
    assertThat(window.window().beside().shows(Showing.LISTS)).isTrue();
  }

  /** A table, a list and the panes they scroll in have keys of their own for the same strokes. */
  @Test
  void theKeysOfTheWindowReachItFromEveryListToo() {
    for (String view : List.of("lists", "sheets")) {
      window.menu("beside." + view);
      JComponent list =
          window.find(view.equals("lists") ? "lists" : "sheets.list", JComponent.class);
      for (String task :
          List.of("beside.before", "beside.after", "beside.outline", "beside.sheets")) {
        KeyStroke key = window.window().catalogue().task(task).key().orElseThrow();
        for (Container at = list; at instanceof JComponent c; at = at.getParent()) {
          for (int kind :
              new int[] {JComponent.WHEN_FOCUSED, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT}) {
            Object taken = c.getInputMap(kind).get(key);
            assertThat(taken == null ? null : c.getActionMap().get(taken))
                .as("%s in %s takes %s", c.getClass().getSimpleName(), view, key)
                .isNull();
          }
        }
      }
    }
  }

  @Test
  void theViewCanHaveAllTheRoomAndThePlanGetsItsOwnBack() {
    window.menu("beside.sheets");
    window.menu("beside.wide");
    assertThat(WindowDriver.onEvents(() -> window.window().canvas().isShowing())).isFalse();
    window.menu("beside.wide");
    WindowDriver.until("the plan is back", () -> window.window().canvas().getWidth() > 100);
    window.menu("beside.wide");
    window.menu("beside.turn");
    WindowDriver.until("the plan is back", () -> window.window().canvas().isShowing());
  }

  @Test
  void theViewCanStandBelowThePlanAndThatIsRemembered() {
    window.menu("beside.house");
    window.menu("beside.below");
    JComponent house = window.window().beside().house().orElseThrow().view();
    WindowDriver.until(
        "it is below",
        () ->
            house.getLocationOnScreen().y
                    > window.window().canvas().getLocationOnScreen().y
                        + window.window().canvas().getHeight()
                        - 1
                && house.getHeight() > 100);
    assertThat(window.window().settings().besideBelow()).isTrue();
    window.menu("beside.wide");
    window.menu("beside.wide");
    WindowDriver.until("the plan is back", () -> window.window().canvas().getHeight() > 100);
    window.menu("beside.below");
    assertThat(window.window().settings().besideBelow()).isFalse();
  }

  @Test
  void aTrussPickedIsTheTrussDrawnAndListedAndItsPartIsSelected() {
    Truss truss = window.design().framing().trusses().get(3);
    window.menu("beside.outline");
    pick(truss.id());
    DrawingCanvas outline = window.find("outline", DrawingCanvas.class);
    WindowDriver.until("it is drawn", () -> outline.drawing().title().equals(truss.mark()));
    assertThat(window.window().job().document().selection().parts()).containsExactly(truss.part());
    assertThat(window.window().picks().subjects()).containsExactly(truss.id());
    window.menu("beside.lists");
    JTable table = list("Trusses, an outline");
    WindowDriver.until("its row is picked", () -> table.getSelectedRowCount() == 1);
    assertThat(WindowDriver.onEvents(() -> table.getValueAt(table.getSelectedRow(), 0)))
        .isEqualTo(truss.mark());
  }

  @Test
  void anythingElsePickedLetsGoOfTheTruss() {
    Truss truss = window.design().framing().trusses().get(0);
    pick(truss.id());
    WindowDriver.onEvents(
        () -> {
          window.window().job().runner().select(Selection.of(Ref.side(truss.part(), 1)));
          return null;
        });
    assertThat(window.window().picks().things()).isEmpty();
    assertThat(window.window().picks().subjects()).containsExactly(truss.part() + "/1");
  }

  @Test
  void aClickOnAPieceOfTheFlatPlaneSelectsTheSideOfItsPlane() {
    window.design();
    window.menu("beside.flat");
    DrawingCanvas flat = window.find("flat", DrawingCanvas.class);
    WindowDriver.until("a plane is drawn", () -> !flat.drawing().marks().isEmpty());
    // At one go, as lettering is laid out anew in its own time.
    String piece =
        WindowDriver.onEvents(
            () -> {
              java.awt.Point at = placeOfPiece(flat);
              String there = flat.at(at.x, at.y).orElseThrow();
              press(flat, at);
              return there;
            });
    assertThat(window.window().picks().things()).extracting(Thing::id).containsExactly(piece);
    assertThat(window.window().picks().planes())
        .containsExactly(piece.substring(0, piece.indexOf(':')));
  }

  private java.awt.Point placeOfPiece(DrawingCanvas flat) {
    for (int y = 10; y < flat.getHeight(); y += 3) {
      for (int x = 10; x < flat.getWidth(); x += 3) {
        if (flat.at(x, y).filter(s -> s.contains(":")).isPresent()) {
          return new java.awt.Point(x, y);
        }
      }
    }
    throw new AssertionError("no piece in sight");
  }

  @Test
  void theFlatPlaneFollowsTheSideThatIsSelected() {
    var planes = window.design().deck().planes();
    window.menu("beside.flat");
    DrawingCanvas flat = window.find("flat", DrawingCanvas.class);
    for (var plane : planes) {
      pick(plane.plane());
      WindowDriver.until(
          plane.plane() + " is drawn",
          () -> flat.drawing().title().equals(String.join(" + ", plane.planes())));
    }
  }

  @Test
  void theSheetsAreThoseOfThePacketAndTurnByKey() {
    List<Page> pages = Packet.pages(window.design(), Packet.paperFor(window.plan().unit()));
    window.menu("beside.sheets");
    JList<?> list = window.find("sheets.list", JList.class);
    WindowDriver.until("sheets are laid out", () -> list.getModel().getSize() == pages.size());
    assertThat(
            IntStream.range(0, pages.size())
                .mapToObj(i -> (Page) list.getModel().getElementAt(i))
                .toList())
        .isEqualTo(pages);
    PageView view = window.find("page", PageView.class);
    assertThat(view.page()).contains(pages.get(0));
    window.menu("beside.after");
    assertThat(view.page()).contains(pages.get(1));
    window.menu("beside.before");
    assertThat(view.page()).contains(pages.get(0));
    double whole = WindowDriver.onEvents(() -> view.view().scale());
    window.menu("sheets.nearer");
    assertThat(WindowDriver.onEvents(() -> view.view().scale())).isGreaterThan(whole);
    key(view, KeyEvent.VK_HOME);
    assertThat(WindowDriver.onEvents(() -> view.view().scale())).isEqualTo(whole);
  }

  @Test
  void aClickOnASheetPicksWhatIsSeenThere() {
    window.menu("beside.sheets");
    JList<?> list = window.find("sheets.list", JList.class);
    WindowDriver.until("sheets are laid out", () -> list.getModel().getSize() > 0);
    PageView view = window.find("page", PageView.class);
    String plane =
        WindowDriver.onEvents(
            () -> {
              java.awt.Point at = placeOfPlane(view);
              String there = view.at(at.x, at.y).orElseThrow();
              press(view, at);
              return there;
            });
    assertThat(window.window().picks().planes()).containsExactly(plane);
  }

  private java.awt.Point placeOfPlane(PageView view) {
    for (int y = view.getHeight() / 4; y < view.getHeight(); y += 3) {
      for (int x = view.getWidth() / 4; x < view.getWidth(); x += 3) {
        Optional<String> there = view.at(x, y);
        if (there.flatMap(s -> Sight.ref(window.window().job().document().plan(), s)).isPresent()
            && there.get().contains("/")) {
          return new java.awt.Point(x, y);
        }
      }
    }
    throw new AssertionError("no plane in sight");
  }

  @Test
  void aListIsCopiedWithItsHeadsAndSortedByLength() throws Exception {
    window.design();
    window.menu("beside.lists");
    JTable table = list("Roof lines");
    int length = 1;
    WindowDriver.onEvents(
        () -> {
          table.getRowSorter().toggleSortOrder(length);
          return null;
        });
    String[] lines =
        WindowDriver.onEvents(() -> window.window().beside().lists().orElseThrow().copied().text())
            .split("\n");
    assertThat(lines[0]).isEqualTo("line\tlength\trun\trise\tbetween");
    assertThat(lines).hasSize(1 + window.design().surface().lines().size());
    List<Double> lengths = new ArrayList<>();
    for (int i = 1; i < lines.length; i++) {
      lengths.add(LengthEntry.read(lines[i].split("\t")[length], LengthUnit.INCH));
    }
    assertThat(lengths).isSorted();
  }

  @Test
  void aRowOfAListPicksWhatItIsAbout() {
    var lines = window.design().surface().lines();
    window.menu("beside.lists");
    JTable table = list("Roof lines");
    WindowDriver.onEvents(
        () -> {
          table.setRowSelectionInterval(2, 2);
          return null;
        });
    assertThat(window.window().picks().things())
        .extracting(Thing::id)
        .containsExactly(lines.get(2).id());
    assertThat(WindowDriver.onEvents(table::getSelectedRow)).isEqualTo(2);
  }

  /** The list whose title begins so, shown. */
  private JTable list(String title) {
    JComboBox<?> chooser = window.find("lists.chooser", JComboBox.class);
    WindowDriver.until("there are lists", () -> chooser.getItemCount() > 3);
    WindowDriver.onEvents(
        () -> {
          for (int i = 0; i < chooser.getItemCount(); i++) {
            if (chooser.getItemAt(i).toString().startsWith(title)) {
              chooser.setSelectedIndex(i);
              return null;
            }
          }
          throw new AssertionError("no list " + title);
        });
    return window.find("lists", JTable.class);
  }

  private static void press(JComponent on, java.awt.Point at) {
    for (int id : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED}) {
      int held = id == MouseEvent.MOUSE_PRESSED ? InputEvent.BUTTON1_DOWN_MASK : 0;
      on.dispatchEvent(new MouseEvent(on, id, 0, held, at.x, at.y, 1, false, MouseEvent.BUTTON1));
    }
  }

  private static void key(JComponent on, int code) {
    WindowDriver.onEvents(
        () -> {
          java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager()
              .redispatchEvent(
                  on, new KeyEvent(on, KeyEvent.KEY_PRESSED, 0, 0, code, KeyEvent.CHAR_UNDEFINED));
          return null;
        });
  }
}

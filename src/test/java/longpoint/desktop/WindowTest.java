package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.canvas.View;
import longpoint.desktop.file.Dialogs.Unsaved;
import longpoint.desktop.file.SwingDialogs;
import longpoint.desktop.panel.Figure;
import longpoint.desktop.panel.LayersPopup;
import longpoint.desktop.panel.LengthDisplay;
import longpoint.desktop.panel.Words;
import longpoint.editor.Ref;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.packet.Packet;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.sheets.Layers;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands around the drawing: moving the sheet, files, looks, finding things. */
class WindowTest {
  private static final Path SAMPLE = Path.of("sample-plans", "quennel-court.json");

  @TempDir Path folder;
  private WindowDriver window;
  private boolean full;

  @BeforeEach
  void open() throws IOException {
    window =
        new WindowDriver(
            PlanFile.read(SAMPLE).plan(),
            (design, request, to, written) -> {
              if (full) {
                throw new IOException("There is no room left at this place.");
              }
              List<Path> files = List.of(to.resolve("roof.pdf"), to.resolve("roof.dxf"));
              for (Path file : files) {
                Files.writeString(file, "roof");
                written.accept(new Packet.Written(file, 1, 2));
              }
              return files;
            });
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private View view() {
    return WindowDriver.onEvents(() -> window.window().canvas().view());
  }

  @Test
  void theWheelZoomsAboutThePointer() {
    Point place = new Point(300, 100);
    double x = view().x(place);
    double y = view().y(place);
    double scale = view().scale();
    window.wheel(300, 100, -2);
    assertThat(view().scale()).isGreaterThan(scale);
    // A pixel at most, which is what the mouse itself resolves.
    assertThat(view().x(place)).isCloseTo(x, within(1.0));
    assertThat(view().y(place)).isCloseTo(y, within(1.0));
    window.wheel(300, 100, 2);
    assertThat(view().scale()).isCloseTo(scale, within(1e-9));
  }

  @Test
  void theMiddleButtonMovesTheSheetAndNothingElse() {
    Plan before = window.plan();
    View from = view();
    window.dragSheet(40, -25);
    assertThat(view().originX() - from.originX()).isEqualTo(40);
    assertThat(view().originY() - from.originY()).isEqualTo(-25);
    assertThat(view().scale()).isEqualTo(from.scale());
    assertThat(window.plan()).isSameAs(before);
  }

  @Test
  void showEverythingBringsEveryWallIntoSight() {
    window.show(40, new Point(5000, 5000));
    window.control(KeyEvent.VK_0);
    int width = WindowDriver.onEvents(() -> window.window().canvas().getWidth());
    int height = WindowDriver.onEvents(() -> window.window().canvas().getHeight());
    for (Point corner : window.plan().parts().get(0).outline().points()) {
      assertThat(view().x(corner)).isBetween(0.0, (double) width);
      assertThat(view().y(corner)).isBetween(0.0, (double) height);
    }
  }

  @Test
  void leavingAChangedPlanAsksAndStayingKeepsIt() {
    window.fill("title", "Quennel Court, second try");
    Plan changed = window.plan();
    window.dialogs().unsaved = Unsaved.STAY;
    window.menu("file.new.in");
    assertThat(window.dialogs().asked).isEqualTo(1);
    assertThat(window.plan()).isSameAs(changed);
    window.dialogs().unsaved = Unsaved.DISCARD;
    window.menu("file.new.in");
    assertThat(window.plan()).isEqualTo(Plan.empty(LengthUnit.INCH));
    assertThat(window.dialogs().asked).isEqualTo(2);
  }

  @Test
  void savingOnTheWayOutWritesTheFile() throws Exception {
    window.fill("title", "Quennel Court, second try");
    Plan changed = window.plan();
    Path file = folder.resolve("second-try.json");
    window.dialogs().unsaved = Unsaved.SAVE;
    window.dialogs().save = Optional.of(file);
    WindowDriver.onEvents(
        () -> {
          window.window().quit();
          return null;
        });
    assertThat(PlanFile.read(file).plan()).isEqualTo(changed);
    JFrame frame = window.window().frame();
    assertThat(WindowDriver.onEvents(frame::isDisplayable)).isFalse();
  }

  @Test
  void aPlanThatCannotBeWrittenStaysOpenAndUnsaved() {
    window.fill("title", "Nowhere");
    window.dialogs().save = Optional.of(folder.resolve("no-such-folder").resolve("plan.json"));
    window.control(KeyEvent.VK_S);
    assertThat(window.dialogs().told).contains("no-such-folder");
    assertThat(window.window().job().document().isDirty()).isTrue();
    assertThat(window.plan().title()).isEqualTo("Nowhere");
  }

  @Test
  void aFileThatIsNoPlanIsSaidSoAndThePlanStays() throws Exception {
    Path bad = Files.writeString(folder.resolve("bad.json"), "{ \"format\": \"shopping-list\" }");
    Plan before = window.plan();
    window.dialogs().open = Optional.of(bad);
    window.control(KeyEvent.VK_O);
    assertThat(window.dialogs().told).contains("bad.json");
    assertThat(window.plan()).isSameAs(before);
  }

  @Test
  void thePacketGoesToTheFolderThatWasChosen() {
    Path to = folder.resolve("packet");
    window.dialogs().folder = Optional.of(to);
    window.menu("file.packet");
    WindowDriver.until("the packet is written", () -> !window.dialogs().told.isEmpty());
    assertThat(to).isDirectoryContaining("glob:**roof.pdf").isDirectoryContaining("glob:**.dxf");
    assertThat(window.dialogs().told).contains("2").contains(to.toString());
  }

  @Test
  void aPacketThatFailsSaysWhy() {
    window.dialogs().folder = Optional.of(folder);
    full = true;
    window.menu("file.packet");
    WindowDriver.until("the failure is told", () -> !window.dialogs().told.isEmpty());
    assertThat(window.dialogs().told).contains("There is no room left at this place.");
  }

  @Test
  void lightAndDarkChangeWindowAndSheetTogether() {
    CanvasColours light = WindowDriver.onEvents(() -> window.window().canvas().colours());
    window.push("header.view.theme");
    CanvasColours dark = WindowDriver.onEvents(() -> window.window().canvas().colours());
    assertThat(dark.ground().getRed()).isLessThan(light.ground().getRed());
    assertThat(
            WindowDriver.onEvents(() -> window.window().frame().getContentPane().getBackground()))
        .matches(c -> c.getRed() < 100, "dark");
    window.push("header.view.theme");
    assertThat(WindowDriver.onEvents(() -> window.window().canvas().colours().ground()))
        .isEqualTo(light.ground());
  }

  @Test
  void figuresCanBeReadInTheOtherUnit() {
    window.design();
    // 1 ft is 304.8 mm exactly (international foot of 1959), so 61 ft are 18 593 mm.
    assertThat(LengthDisplay.OTHER_UNIT.of(61 * 12, LengthUnit.INCH)).isEqualTo("18593 mm");
    assertThat(LengthDisplay.INCHES_ONLY.of(61 * 12 + 0.25, LengthUnit.INCH))
        .isEqualTo("732 1/4\"");
    JList<?> figures = window.find("figures", JList.class);
    WindowDriver.until("figures are listed", () -> figures.getModel().getSize() > 0);
    List<String> plain = values(figures);
    window.type("uu");
    assertThat(values(figures)).isNotEqualTo(plain).anyMatch(v -> v.endsWith(" mm"));
    window.type("u");
    assertThat(values(figures)).isEqualTo(plain);
  }

  private static List<String> values(JList<?> figures) {
    return WindowDriver.onEvents(
        () ->
            IntStream.range(0, figures.getModel().getSize())
                .mapToObj(i -> ((Figure) figures.getModel().getElementAt(i)).value())
                .toList());
  }

  @Test
  void aLayerSwitchedOffLeavesTheSheet() {
    JPopupMenu popup =
        WindowDriver.onEvents(
            () ->
                LayersPopup.open(
                    window.window().canvas(), Layers.ofPlanView(), window.window().canvas()));
    JCheckBox hips = WindowDriver.find(popup, "layer." + Layers.HIP.name(), JCheckBox.class);
    WindowDriver.onEvents(
        () -> {
          hips.doClick(0);
          return null;
        });
    assertThat(window.window().canvas().isLayerShown(Layers.HIP.name())).isFalse();
    assertThat(window.window().canvas().isLayerShown(Layers.RIDGE.name())).isTrue();
    WindowDriver.onEvents(
        () -> {
          popup.setVisible(false);
          return null;
        });
  }

  @Test
  void theFinderDoesWhatItsFirstAnswerSays() {
    WindowDriver.onEvents(
        () -> {
          window.window().finder().open();
          return null;
        });
    java.awt.Window finder = owned("finder");
    JTextField field = WindowDriver.find(finder, "finder.field", JTextField.class);
    boolean grid = window.window().canvas().isGridShown();
    WindowDriver.onEvents(
        () -> {
          field.setText("squares");
          field.getActionMap().get("finder" + KeyEvent.VK_ENTER).actionPerformed(null);
          return null;
        });
    assertThat(window.window().canvas().isGridShown()).isNotEqualTo(grid);
    assertThat(WindowDriver.onEvents(finder::isVisible)).isFalse();
  }

  private java.awt.Window owned(String name) {
    return WindowDriver.onEvents(
        () ->
            Stream.of(window.window().frame().getOwnedWindows())
                .filter(w -> name.equals(w.getName()) && w.isShowing())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no window named " + name)));
  }

  private boolean asked() {
    return Stream.of(window.window().frame().getOwnedWindows())
        .anyMatch(w -> "question".equals(w.getName()) && w.isShowing());
  }

  @Test
  void theQuestionItselfGivesTheAnswerOfItsButton() {
    for (String answer : List.of("save", "discard", "stay")) {
      Unsaved[] given = new Unsaved[1];
      SwingUtilities.invokeLater(
          () -> given[0] = new SwingDialogs(window.window().canvas()).unsaved("Quennel Court"));
      WindowDriver.until("the question is asked", this::asked);
      AbstractButton button =
          WindowDriver.find(owned("question"), "question." + answer, AbstractButton.class);
      WindowDriver.onEvents(
          () -> {
            button.doClick(0);
            return null;
          });
      WindowDriver.until("it is answered", () -> given[0] != null);
      assertThat(given[0]).isEqualTo(Unsaved.valueOf(answer.toUpperCase(Locale.ROOT)));
    }
  }

  @Test
  void aProblemLeadsToItsPlace() {
    // Walls that cross are wrong whatever else may be said about a plan.
    Plan plan = window.plan();
    Ring crossed = Ring.of(0, 0, 480, 336, 480, 0, 0, 336);
    Part part =
        plan.parts()
            .get(0)
            .withShape(crossed, List.of(), Collections.nCopies(4, Edge.of(EdgeKind.EAVE)));
    WindowDriver.onEvents(
        () -> {
          window.window().job().open(plan.withParts(List.of(part)), Optional.empty(), List.of());
          return null;
        });
    window.design();
    JList<?> problems = window.find("problems", JList.class);
    WindowDriver.until("problems are listed", () -> problems.getModel().getSize() > 0);
    window.show(40, new Point(9000, 9000));
    WindowDriver.onEvents(
        () -> {
          problems.setSelectedIndex(0);
          return null;
        });
    List<Ref> picked = window.window().job().document().selection().refs();
    assertThat(picked).hasSize(1);
    assertThat(picked.get(0).part()).isEqualTo(part.id());
    int width = WindowDriver.onEvents(() -> window.window().canvas().getWidth());
    assertThat(view().x(crossed.bounds().middle())).isBetween(0.0, (double) width);
  }

  @Test
  void theStatusLineSaysWhatThePointerWillDo() {
    Words status = window.find("status", Words.class);
    window.type("r");
    WindowDriver.until("the tool has spoken", () -> status.getText().contains("first corner"));
    window.click(-300, -300).move(-200, -200);
    WindowDriver.until("the next step is told", () -> status.getText().contains("opposite"));
  }

  @Test
  void typedNonsenseIsExplainedAtThePointerAndLost() {
    Plan before = window.plan();
    window.type("r").click(-300, -300).move(-200, -200).type("12 x").enter();
    assertThat(window.window().job().runner().entryProblem()).isPresent();
    window.escape().escape().escape();
    assertThat(window.plan()).isSameAs(before);
  }
}

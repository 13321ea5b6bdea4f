package longpoint.desktop;

import java.awt.BorderLayout;
import java.awt.datatransfer.Transferable;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.paper.SheetCopy;
import longpoint.desktop.view.BesideView;
import longpoint.desktop.view.HouseView;
import longpoint.desktop.view.ListsView;
import longpoint.desktop.view.SheetsView;
import longpoint.desktop.view.Showing;
import longpoint.desktop.view.Strip;
import longpoint.desktop.view.Views;

/**
 * The sheet one draws on with one view beside it, in step: both show the newest design and the same
 * picks. Views are made when they are first shown, and one that is not shown costs nothing.
 */
final class Beside {
  private final JComponent sheet;
  private final Job job;
  private final Picks picks;
  private final Settings settings;
  private final Predicate<Character> letters;
  private final Halves halves;
  private final Strip switcher = new Strip("beside");
  private final JPanel pane;
  private final Map<Showing, BesideView> made = new EnumMap<>(Showing.class);
  private Optional<BesideView> shown = Optional.empty();
  private Showing showing;
  private Catalogue catalogue;
  private CanvasColours colours = CanvasColours.light();
  private double lettering = 1;
  private Runnable changed = () -> {};

  /**
   * @param halves the sheet and the room beside it
   * @param letters as for the sheet: does what a letter stands for
   */
  Beside(
      Halves halves,
      JComponent sheet,
      Job job,
      Picks picks,
      Settings settings,
      Predicate<Character> letters) {
    this.sheet = sheet;
    this.job = job;
    this.picks = picks;
    this.settings = settings;
    this.letters = letters;
    this.halves = halves;
    pane = halves.pane();
    showing = settings.beside();
    job.onPicture(() -> shown.ifPresent(BesideView::follow));
    picks.onChange(() -> shown.ifPresent(BesideView::showPicks));
  }

  /**
   * Puts the buttons in, and shows the view that was shown last.
   *
   * @param changed called whenever a view is shown, put away, or shows other things
   */
  void furnish(Catalogue catalogue, Runnable changed) {
    this.catalogue = catalogue;
    this.changed = changed;
    for (Showing one : Showing.values()) {
      switcher.worded(catalogue.task("beside." + one.key()), "");
    }
    switcher.picture(catalogue.task("beside.below"), "gapleft push");
    switcher.picture(catalogue.task("beside.wide"), "");
    pane.add(switcher, BorderLayout.NORTH);
    if (halves.isOpen()) {
      show(showing);
    }
  }

  boolean isShown() {
    return halves.isOpen();
  }

  boolean shows(Showing one) {
    return isShown() && showing == one;
  }

  /** Shows the view shown last, or puts it away. */
  void turnOver() {
    if (isShown()) {
      putAway();
    } else {
      show(showing);
    }
  }

  /** Shows a view and lets it have the keyboard; the one that is shown already is put away. */
  void choose(Showing one) {
    if (shows(one)) {
      putAway();
    } else {
      show(one);
      shown.ifPresent(v -> v.heart().requestFocusInWindow());
    }
  }

  private void show(Showing one) {
    BesideView view = view(one);
    Optional<BesideView> before = shown.filter(v -> v != view);
    shown = Optional.of(view);
    showing = one;
    pane.add(view.component(), BorderLayout.CENTER, 0);
    // Only once the keyboard is elsewhere: taken out with it, it would send it to some field.
    before.ifPresent(v -> SwingUtilities.invokeLater(() -> takeOut(v)));
    settings.setBeside(one);
    if (!isShown()) {
      halves.open();
    }
    pane.revalidate();
    pane.repaint();
    view.dress(colours, lettering);
    view.follow();
    view.showPicks();
    changed.run();
  }

  private void takeOut(BesideView view) {
    if (shown.orElse(null) != view) {
      pane.remove(view.component());
    }
  }

  private BesideView view(Showing one) {
    return made.computeIfAbsent(one, o -> Views.of(o, job, picks, settings, letters, catalogue));
  }

  private void putAway() {
    halves.shut();
    shown.ifPresent(v -> pane.remove(v.component()));
    shown = Optional.empty();
    sheet.requestFocusInWindow();
    changed.run();
  }

  boolean isBelow() {
    return halves.isBelow();
  }

  /** Puts the view below the plan, or beside it again. */
  void turnBelow() {
    halves.turnBelow();
    changed.run();
  }

  boolean isWide() {
    return halves.isWide();
  }

  /** Gives the view all the room, or the sheet its own back. */
  void widen() {
    halves.widen();
    changed.run();
  }

  /** The thing before or after the one the view shows. */
  void step(int by) {
    shown.ifPresent(v -> v.step(by));
  }

  /** Whether the keyboard is in the view rather than on the sheet. */
  boolean hasKeyboard() {
    java.awt.Component at =
        java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
    return isShown() && at != null && SwingUtilities.isDescendingFrom(at, pane);
  }

  /** What the view would put on the clipboard. */
  Optional<Transferable> copied(SheetCopy.As as) {
    return shown.flatMap(v -> v.copied(as));
  }

  /** Does something with the house, if it is shown. */
  void house(Consumer<HouseView> work) {
    if (shown.orElse(null) instanceof HouseView house) {
      work.accept(house);
      changed.run();
    }
  }

  Optional<HouseView> house() {
    return shown.filter(HouseView.class::isInstance).map(HouseView.class::cast);
  }

  Optional<SheetsView> sheets() {
    return shown.filter(SheetsView.class::isInstance).map(SheetsView.class::cast);
  }

  Optional<ListsView> lists() {
    return shown.filter(ListsView.class::isInstance).map(ListsView.class::cast);
  }

  /** Brings the buttons up to date. */
  void refresh() {
    switcher.refresh();
    shown.ifPresent(BesideView::refresh);
  }

  /** Another plan: nothing of the last one is kept. */
  void startOver() {
    made.values().forEach(BesideView::startOver);
    shown.ifPresent(BesideView::follow);
  }

  /**
   * @param lettering 1 for ordinary eyes, more for larger letters
   */
  void dress(CanvasColours colours, double lettering) {
    this.colours = colours;
    this.lettering = lettering;
    SwingUtilities.updateComponentTreeUI(pane);
    made.values().forEach(v -> SwingUtilities.updateComponentTreeUI(v.component()));
    shown.ifPresent(v -> v.dress(colours, lettering));
  }

  void close() {
    made.values().forEach(BesideView::close);
  }
}

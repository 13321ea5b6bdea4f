package longpoint.desktop;

import java.awt.Frame;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Finder;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.file.BackdropFlow;
import longpoint.desktop.file.Dialogs;
import longpoint.desktop.file.Drafts;
import longpoint.desktop.file.FileFlow;
import longpoint.desktop.file.PacketWriter;
import longpoint.desktop.file.SupplierFlow;
import longpoint.desktop.file.TracingFlow;
import longpoint.desktop.panel.AppIcon;
import longpoint.desktop.panel.Header;
import longpoint.desktop.panel.LengthDisplay;
import longpoint.desktop.panel.SidePanel;
import longpoint.desktop.panel.StatusLine;
import longpoint.desktop.panel.ToolStrip;
import longpoint.plan.Plan;

/** The window: the sheet in the middle, and around it what one needs to draw on it. */
public final class MainWindow {
  private final FirstSight first;
  private final JFrame frame;
  private final PlanCanvas canvas;
  private final StatusLine status = new StatusLine();
  private final Job job;
  private final Settings settings;
  private final Dialogs dialogs;
  private final FileFlow files;
  private final BackdropFlow pictures;
  private final TracingFlow tracings;
  private final BackdropShow backdrop;
  private final Drafts drafts;
  private final Catalogue catalogue;
  private final Sight sight;
  private final Picks picks;
  private final ProblemPlaces places;
  private final Beside beside;
  private final Drafting drafting;
  private final Errands errands = new Errands(status);
  private final Patience patience;
  private final Outgoing outgoing;
  private final Appearance appearance;
  private ToolStrip tools;
  private Header header;
  private SidePanel side;
  private Optional<RecentMenu> recent = Optional.empty();
  private Finder finder;
  private final Holds holds;
  private boolean whole;
  private boolean refreshing;

  /**
   * The works behind what is seen first; the neighbours of the sheet come by {@link Stage}s.
   *
   * @param dialogs what asks the user, made for the window
   * @param packets writes what goes out
   * @param draftFolder where drafts of unsaved plans are kept
   */
  MainWindow(
      FirstSight first,
      Job job,
      Settings settings,
      Function<JFrame, Dialogs> dialogs,
      PacketWriter packets,
      Path draftFolder) {
    this.first = first;
    frame = first.frame();
    canvas = first.canvas();
    this.job = job;
    this.settings = settings;
    this.dialogs = dialogs.apply(frame);
    files = new FileFlow(job, settings, this.dialogs, this::opened);
    drafts =
        new Drafts(job, draftFolder, words -> this.dialogs.tell(Texts.of("tell.noDraft"), words));
    picks = new Picks(job);
    beside = new Beside(first.halves(), canvas, job, picks, settings, this::performLetter);
    outgoing = new Outgoing(this, packets, errands);
    tracings = new TracingFlow(job, this.dialogs, errands);
    pictures = new BackdropFlow(job, this.dialogs, canvas::seen, errands);
    patience = new Patience(job, errands, status);
    sight = new Sight(job, canvas);
    places = new ProblemPlaces(job, canvas, sight);
    catalogue = new WindowTasks(this).catalogue();
    holds = Holds.of(job.runner(), settings);
    drafting = new Drafting(canvas, job, picks, places, status);
    backdrop = new BackdropShow(job, canvas);
    appearance =
        new Appearance(frame, canvas, job, settings, beside, first.welcome(), this::refresh);
    connect();
  }

  private void connect() {
    drafting.connect(catalogue, this::performLetter, sight, this::length, patience::callOff);
    job.runner().onChange(this::refreshSoon);
    job.onPicture(this::showPicture);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            quit();
          }
        });
  }

  private String length(double length) {
    LengthDisplay display = whole ? side.display() : LengthDisplay.OF_PLAN;
    return display.of(length, job.runner().shown().unit());
  }

  // The stages, in their order

  void fillMenus() {
    first.menus().fill(catalogue);
    RecentMenu lately = new RecentMenu(settings, files::open);
    recent = Optional.of(lately);
    first.menus().insert("menu.file", lately.menu(), 3);
  }

  void setOutTools() {
    tools = new ToolStrip(toolTasks());
    first.fill(Place.Of.TOOLS, tools);
  }

  void writeHeader() {
    header = new Header(catalogue);
    showTitle();
    first.fill(Place.Of.HEADER, header);
    first.fill(Place.Of.STATUS, status);
  }

  void setOutSide() {
    side = new SidePanel(job, drafting::pick, places);
    side.onLeave(canvas::requestFocusInWindow);
  }

  void showSide() {
    side.update();
    first.fill(Place.Of.SIDE, side);
  }

  void standBeside() {
    beside.furnish(catalogue, this::refresh);
    beside.dress(settings.theme().canvas(), Appearance.lettering(settings));
  }

  void whole() {
    whole = true;
    if (job.picture().design().plan() == job.document().plan()) {
      side.picture();
    }
    refresh();
    frame.setIconImages(AppIcon.images());
    new PlanDrop(files::open, pictures::load, tracings::load, suppliers()::load).on(frame);
  }

  private boolean performLetter(char letter) {
    return catalogue.onLetter(letter).map(this::perform).orElse(false);
  }

  private boolean perform(Task task) {
    task.perform();
    return true;
  }

  private List<Task> toolTasks() {
    return catalogue.all().stream().filter(t -> t.id().startsWith("tool.")).toList();
  }

  /** One refresh for however many changes a single gesture makes. */
  private void refreshSoon() {
    canvas.repaint();
    if (!refreshing) {
      refreshing = true;
      SwingUtilities.invokeLater(this::refresh);
    }
  }

  private void refresh() {
    refreshing = false;
    if (!whole) {
      return;
    }
    status.say(job.runner().status());
    if (!job.runner().previewing()) { // in the middle of a gesture nobody opens a menu
      first.menus().refresh();
      tools.refresh();
    }
    beside.refresh();
    first.welcome().follow(job);
    side.update();
    backdrop.update();
    showTitle();
    showState();
    canvas.repaint();
  }

  private void showPicture() {
    Plan plan = job.picture().design().plan();
    canvas.show(job.picture().drawing(), plan.unit());
    canvas.setShade(new Daylight(job.picture().design().surface()));
    sight.picture();
    drafting.pick(Optional.empty());
    if (whole) {
      side.picture();
      showState();
    }
  }

  private void showTitle() {
    String shown = job.title();
    boolean dirty = job.document().isDirty();
    header.show(shown, Texts.of(dirty ? "app.unsaved" : "app.saved"));
    first.title(shown, dirty ? " • " : " – ");
    frame.getRootPane().putClientProperty("Window.documentModified", dirty);
  }

  private void showState() {
    patience.follow();
    if (job.isCalledOff()) {
      first.menus().refresh(); // it can be taken up again
      status.state(Texts.of("state.notSolved"));
    } else if (job.failure().isPresent()) {
      status.state(Texts.of("state.failed"));
    } else if (job.document().plan().parts().isEmpty()) {
      status.state("");
    } else if (job.isUpToDate()) {
      status.state(Texts.of("state.solved"));
    } else {
      status.state(Texts.of("state.working"));
    }
  }

  // What the tasks reach for

  public JFrame frame() {
    return frame;
  }

  public PlanCanvas canvas() {
    return canvas;
  }

  public Job job() {
    return job;
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  Settings settings() {
    return settings;
  }

  Finder finder() {
    if (finder == null) {
      finder = new Finder(frame, catalogue);
    }
    return finder;
  }

  JComponent headerButton(String id) {
    for (java.awt.Component c : header.getComponents()) {
      if (c instanceof JComponent j && ("header." + id).equals(c.getName()) && c.isShowing()) {
        return j;
      }
    }
    return canvas;
  }

  Dialogs dialogs() {
    return dialogs;
  }

  Drafts drafts() {
    return drafts;
  }

  SidePanel side() {
    return side;
  }

  Beside beside() {
    return beside;
  }

  ProblemPlaces places() {
    return places;
  }

  Sight sight() {
    return sight;
  }

  Holds holds() {
    return holds;
  }

  FileFlow files() {
    return files;
  }

  Picks picks() {
    return picks;
  }

  /** Says something in a few words that need no answer. */
  void say(String words) {
    status.state(words);
  }

  Outgoing outgoing() {
    return outgoing;
  }

  Errands errands() {
    return errands;
  }

  SupplierFlow suppliers() {
    return new SupplierFlow(job, dialogs, errands);
  }

  TracingFlow tracings() {
    return tracings;
  }

  Appearance appearance() {
    return appearance;
  }

  BackdropFlow pictures() {
    return pictures;
  }

  /** Another plan: everything in sight once its roof is there. */
  private void opened() {
    sight.startOver();
    beside.startOver();
    recent.ifPresent(RecentMenu::list);
  }

  /** Takes up again working out the plan, which was called off. */
  void goOnAgain() {
    job.goOnAgain();
    refresh();
  }

  /** Closes the window, unless there is something to save and the user would rather stay. */
  void quit() {
    if (files.mayLeave()) {
      boolean maximised = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
      settings.setMaximised(maximised);
      if (!maximised) {
        settings.setWindow(frame.getBounds());
      }
      frame.dispose();
      settings.close();
      drafts.close();
      beside.close();
      patience.close();
      job.close();
    }
  }
}

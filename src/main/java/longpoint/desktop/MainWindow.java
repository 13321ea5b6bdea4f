package longpoint.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.UIManager;
import javax.swing.WindowConstants;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Finder;
import longpoint.desktop.action.Menus;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.EditGestures;
import longpoint.desktop.canvas.OverlayPainter;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.canvas.View;
import longpoint.desktop.file.Dialogs;
import longpoint.desktop.file.Drafts;
import longpoint.desktop.file.FileFlow;
import longpoint.desktop.file.PacketWriter;
import longpoint.desktop.panel.AppIcon;
import longpoint.desktop.panel.Figure;
import longpoint.desktop.panel.FigureMark;
import longpoint.desktop.panel.Header;
import longpoint.desktop.panel.SidePanel;
import longpoint.desktop.panel.StatusLine;
import longpoint.desktop.panel.ToolStrip;
import longpoint.editor.Picker;
import longpoint.editor.Selection;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/** The window: the sheet in the middle, and around it what one needs to draw on it. */
public final class MainWindow {
  /** Lettering is laid out anew when a zoom has come to rest for so long, in milliseconds. */
  private static final int REST = 120;

  private final JFrame frame = new JFrame();
  private final PlanCanvas canvas = new PlanCanvas();
  private final StatusLine status = new StatusLine();
  private final Job job;
  private final Settings settings;
  private final Dialogs dialogs;
  private final FileFlow files;
  private final Drafts drafts;
  private final Catalogue catalogue;
  private final Menus menus;
  private final ToolStrip tools;
  private final Header header;
  private final SidePanel side;
  private final Finder finder;
  private final Sight sight;
  private final Beside beside;
  private final Timer letteringRest;
  private final JMenu recent = new JMenu(Texts.of("menu.recent"));
  private Optional<Figure> pickedFigure = Optional.empty();
  private boolean refreshing;

  /**
   * @param dialogs what asks the user, made for the window
   * @param packets writes what goes out
   * @param draftFolder where drafts of unsaved plans are kept
   */
  MainWindow(
      Job job,
      Settings settings,
      Function<JFrame, Dialogs> dialogs,
      PacketWriter packets,
      Path draftFolder) {
    this.job = job;
    this.settings = settings;
    this.dialogs = dialogs.apply(frame);
    files = new FileFlow(job, settings, this.dialogs, packets, this::opened, status::state);
    drafts =
        new Drafts(job, draftFolder, words -> this.dialogs.tell(Texts.of("tell.noDraft"), words));
    beside = new Beside(canvas, job, settings, this::performLetter);
    catalogue = new WindowTasks(this).catalogue();
    menus = new Menus(catalogue);
    tools = new ToolStrip(toolTasks());
    header = new Header(catalogue);
    sight = new Sight(job, canvas);
    side = new SidePanel(job, this::pick, sight::go);
    finder = new Finder(frame, catalogue);
    letteringRest = new Timer(REST, e -> job.letterFor(canvas.unitsPerMm()));
    letteringRest.setRepeats(false);
    recent.setName("menu.recent");
    menus.insert("menu.file", recent, 3);
    beside.furnish(catalogue, settings.theme(), this::refresh);
    layOut();
    connect();
    refresh();
  }

  private void layOut() {
    canvas.setName("canvas");
    canvas.getAccessibleContext().setAccessibleName(Texts.of("panel.sheet"));
    canvas.setFont(UIManager.getFont("defaultFont"));
    canvas.setColours(settings.theme().canvas());
    canvas.setLayerShown(FrameMarks.TRUSSES.name(), false);
    canvas.setLayerShown(FrameMarks.RAFTERS.name(), false);
    JPanel middle = new JPanel(new BorderLayout());
    middle.add(header, BorderLayout.NORTH);
    middle.add(beside.component(), BorderLayout.CENTER);
    frame.setName("main");
    frame.setIconImages(AppIcon.images());
    frame.setJMenuBar(menus.bar());
    frame.add(middle, BorderLayout.CENTER);
    frame.add(tools, BorderLayout.WEST);
    frame.add(side, BorderLayout.EAST);
    frame.add(status, BorderLayout.SOUTH);
    frame.setMinimumSize(new Dimension(960, 640));
    Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    frame.setSize(Math.min(1560, room.width), Math.min(960, room.height));
    frame.setLocationRelativeTo(null);
    settings.window().filter(room::contains).ifPresent(frame::setBounds);
    listRecent();
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
  }

  private void connect() {
    OverlayPainter overlay =
        new OverlayPainter(job.runner(), canvas::getFont, canvas::pointer, Texts.of("sheet.empty"));
    canvas.setOverPaint(
        (g, view, colours) -> {
          pickedFigure.ifPresent(f -> FigureMark.paint(f, g, view, colours));
          overlay.paint(g, view, colours);
        });
    canvas.setGestures(new EditGestures(job.runner(), this::performLetter, this::sheetMenu));
    canvas.onView(
        () -> {
          sight.moved();
          letteringRest.restart();
          place();
        });
    canvas.addMouseMotionListener(
        new java.awt.event.MouseMotionAdapter() {
          @Override
          public void mouseMoved(MouseEvent e) {
            place();
          }

          @Override
          public void mouseDragged(MouseEvent e) {
            place();
          }
        });
    job.runner().onChange(this::refreshSoon);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            quit();
          }

          @Override
          public void windowOpened(WindowEvent e) {
            canvas.requestFocusInWindow();
          }
        });
    new PlanDrop(files::open).on(frame);
    job.onPicture(this::showPicture);
  }

  /** What can be done with what lies under the pointer, which is picked first. */
  private void sheetMenu(MouseEvent e, View view) {
    Point at = view.toPlan(e.getX(), e.getY());
    Plan plan = job.document().plan();
    Picker.pick(plan, at, EditGestures.REACH / view.scale())
        .filter(r -> !job.document().selection().contains(r))
        .ifPresent(r -> job.runner().select(Selection.of(r)));
    Menus.popup(catalogue, WindowTasks.ON_SHEET).show(canvas, e.getX(), e.getY());
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
    status.say(job.runner().status());
    menus.refresh();
    tools.refresh();
    beside.refresh();
    side.update();
    showTitle();
    showState();
    canvas.repaint();
  }

  private void showPicture() {
    Plan plan = job.picture().design().plan();
    canvas.show(job.picture().drawing(), plan.unit());
    canvas.setShade(new Daylight(job.picture().design().surface()));
    sight.picture();
    if (pickedFigure.isPresent()) {
      pickedFigure = Optional.empty();
    }
    side.picture();
    showState();
  }

  private void showTitle() {
    String shown = job.title();
    boolean dirty = job.document().isDirty();
    header.show(shown, Texts.of(dirty ? "app.unsaved" : "app.saved"));
    frame.setTitle(shown + (dirty ? " • " : " – ") + Texts.of("app.name"));
    frame.getRootPane().putClientProperty("Window.documentModified", dirty);
  }

  private void showState() {
    if (job.failure().isPresent()) {
      status.state(Texts.of("state.failed"));
    } else if (job.isUpToDate()) {
      status.state(Texts.of("state.solved"));
    } else {
      status.state(Texts.of("state.working"));
    }
  }

  private void place() {
    java.awt.Point at = canvas.pointer();
    if (at == null) {
      status.place("");
      return;
    }
    Point p = canvas.view().toPlan(at.x, at.y);
    Plan plan = job.runner().shown();
    status.place(
        Texts.of(
            "status.place",
            side.display().of(p.x(), plan.unit()),
            side.display().of(p.y(), plan.unit())));
  }

  private void pick(Optional<Figure> figure) {
    pickedFigure = figure;
    canvas.repaint();
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

  Sight sight() {
    return sight;
  }

  FileFlow files() {
    return files;
  }

  /** Another plan: everything in sight once its roof is there. */
  private void opened() {
    sight.startOver();
    beside.startOver();
    listRecent();
  }

  private void listRecent() {
    recent.removeAll();
    for (Path plan : settings.recent()) {
      JMenuItem item = new JMenuItem(plan.getFileName().toString());
      item.setToolTipText(plan.toString());
      item.addActionListener(e -> files.open(plan));
      recent.add(item);
    }
    recent.setEnabled(recent.getItemCount() > 0);
  }

  /** Closes the window, unless there is something to save and the user would rather stay. */
  void quit() {
    if (files.mayLeave()) {
      settings.setWindow(frame.getBounds());
      frame.dispose();
      drafts.close();
      job.close();
    }
  }

  void setTheme(Theme theme) {
    settings.setTheme(theme);
    theme.install(settings.textSize());
    dress();
  }

  void setTextSize(int points) {
    settings.setTextSize(points);
    settings.theme().install(settings.textSize());
    dress();
  }

  private void dress() {
    SwingUtilities.updateComponentTreeUI(frame);
    canvas.setFont(UIManager.getFont("defaultFont"));
    canvas.setColours(settings.theme().canvas());
    canvas.setLetteringZoom(settings.textSize() / 15.0);
    beside.dress(settings.theme());
    job.letterFor(canvas.unitsPerMm());
    frame.revalidate();
  }
}

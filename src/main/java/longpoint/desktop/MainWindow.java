package longpoint.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
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
import longpoint.desktop.panel.Figure;
import longpoint.desktop.panel.FigureMark;
import longpoint.desktop.panel.Header;
import longpoint.desktop.panel.SidePanel;
import longpoint.desktop.panel.StatusLine;
import longpoint.desktop.panel.ToolStrip;
import longpoint.drawing.Strokes;
import longpoint.editor.Picker;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofLine;
import longpoint.units.LengthText;

/** The window: the sheet in the middle, and around it what one needs to draw on it. */
public final class MainWindow {
  /** Lettering is laid out anew when a zoom has come to rest for so long, in milliseconds. */
  private static final int REST = 120;

  /**
   * A new plan is fitted as soon as its roof is there, and once more when its lettering has been
   * laid out for that zoom.
   */
  private static final int FITS = 2;

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
  private final Timer letteringRest;
  private final JMenu recent = new JMenu(Texts.of("menu.recent"));
  private Optional<Figure> pickedFigure = Optional.empty();
  private boolean refreshing;
  private int fits = FITS;

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
    catalogue = new WindowTasks(this).catalogue();
    menus = new Menus(catalogue);
    tools = new ToolStrip(toolTasks());
    header = new Header(catalogue);
    side = new SidePanel(job, this::pick, this::go);
    finder = new Finder(frame, catalogue);
    letteringRest = new Timer(REST, e -> job.letterFor(canvas.unitsPerMm()));
    letteringRest.setRepeats(false);
    recent.setName("menu.recent");
    menus.insert("menu.file", recent, 3);
    layOut();
    connect();
    refresh();
  }

  private void layOut() {
    canvas.setName("canvas");
    canvas.getAccessibleContext().setAccessibleName(Texts.of("panel.sheet"));
    canvas.setFont(UIManager.getFont("defaultFont"));
    canvas.setColours(settings.theme().canvas());
    JPanel middle = new JPanel(new BorderLayout());
    middle.add(header, BorderLayout.NORTH);
    middle.add(canvas, BorderLayout.CENTER);
    frame.setName("main");
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
    canvas.setGestures(
        new EditGestures(
            job.runner(),
            letter -> catalogue.onLetter(letter).map(this::perform).orElse(false),
            this::sheetMenu));
    canvas.onView(
        () -> {
          fits = 0; // whoever has moved the sheet wants it where it is
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
    side.update();
    showTitle();
    showState();
    canvas.repaint();
  }

  private void showPicture() {
    Plan plan = job.picture().design().plan();
    canvas.show(job.picture().drawing(), plan.unit());
    setExtent();
    canvas.setShade(new Daylight(job.picture().design().surface()));
    if (fits > 0) {
      int left = fits - 1;
      canvas.fit();
      fits = left;
    }
    if (pickedFigure.isPresent()) {
      pickedFigure = Optional.empty();
    }
    side.picture();
    showState();
  }

  /** Walls and roof, and how far the lettering reaches beyond them on the screen. */
  private void setExtent() {
    Picture picture = job.picture();
    Bounds bare = Bounds.EMPTY;
    for (Part part : picture.design().plan().parts()) {
      bare = bare.with(part.outline().bounds());
    }
    for (RoofLine line : picture.design().surface().lines()) {
      bare = bare.with(line.from().plan()).with(line.to().plan());
    }
    Bounds all = Strokes.of(picture.drawing().marks(), picture.unitsPerMm()).bounds().with(bare);
    double pixels = canvas.pixelsPerMm() / picture.unitsPerMm();
    canvas.setExtent(
        bare,
        bare.isEmpty()
            ? new Insets(0, 0, 0, 0)
            : new Insets(
                (int) Math.ceil((all.maxY() - bare.maxY()) * pixels),
                (int) Math.ceil((bare.minX() - all.minX()) * pixels),
                (int) Math.ceil((bare.minY() - all.minY()) * pixels),
                (int) Math.ceil((all.maxX() - bare.maxX()) * pixels)));
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
            "status.place", LengthText.of(p.x(), plan.unit()), LengthText.of(p.y(), plan.unit())));
  }

  private void pick(Optional<Figure> figure) {
    pickedFigure = figure;
    canvas.repaint();
  }

  /** Selects what a problem is about and brings it into sight. */
  private void go(Problem problem) {
    Plan plan = job.document().plan();
    refs(plan, problem.where())
        .ifPresent(
            ref -> {
              job.runner().select(Selection.of(ref));
              canvas.centre(middle(plan, ref));
            });
  }

  private static Optional<Ref> refs(Plan plan, String where) {
    List<Ref> all = new ArrayList<>();
    for (Part part : plan.parts()) {
      if (part.id().equals(where)) {
        all.add(Ref.part(part.id()));
      }
      for (int i = 0; i < part.sideCount(); i++) {
        if (longpoint.plan.Side.id(part.id(), i).equals(where)) {
          all.add(Ref.side(part.id(), i));
        }
      }
    }
    return all.stream().findFirst();
  }

  private static Point middle(Plan plan, Ref ref) {
    Part part = plan.part(ref.part()).orElseThrow();
    return ref instanceof Ref.OfSide side
        ? part.side(side.side()).middle()
        : part.outline().bounds().middle();
  }

  /** Brings what is picked into sight, or everything. */
  void fitPicked() {
    Plan plan = job.document().plan();
    Bounds box = Bounds.EMPTY;
    for (Ref ref : job.document().selection().refs()) {
      if (ref instanceof Ref.OfSide side) {
        Segment wall = plan.part(side.part()).orElseThrow().side(side.side());
        box = box.with(wall.from()).with(wall.to());
      } else {
        box = box.with(plan.part(ref.part()).orElseThrow().outline().bounds());
      }
    }
    if (box.isEmpty()) {
      canvas.fit();
    } else {
      canvas.fit(box);
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

  FileFlow files() {
    return files;
  }

  /** Another plan: everything in sight once its roof is there. */
  private void opened() {
    fits = FITS;
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
    job.letterFor(canvas.unitsPerMm());
    frame.revalidate();
  }
}

package longpoint.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.UIManager;
import javax.swing.WindowConstants;
import longpoint.desktop.action.Menus;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.geometry.Bounds;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.sheets.FrameLayers;
import longpoint.sheets.PlanView;

/**
 * What is seen first, made before anything else of the window: the sheet at its own size and place,
 * the card of beginnings on it, the titles of the menus, and the places of the sheet's neighbours.
 */
final class FirstSight {
  /** About what lettering takes around a plan once there is some, in pixels. */
  private static final Insets LETTERING = new Insets(50, 50, 50, 50);

  private final JFrame frame = new JFrame();
  private final PlanCanvas canvas = new PlanCanvas();
  private final Menus menus = new Menus(WindowTasks.CHAPTERS);
  private final Map<Place.Of, Place> places = new EnumMap<>(Place.Of.class);
  private final Halves halves;
  private final Welcome welcome;

  /**
   * @param window the whole window, asked for when something is to be done
   */
  FirstSight(Settings settings, Supplier<MainWindow> window) {
    welcome = new Welcome(canvas, settings, new Beginnings(window));
    sheet(settings);
    halves = new Halves(canvas, settings);
    JPanel middle = new JPanel(new BorderLayout());
    for (Place.Of of : Place.Of.values()) {
      places.put(of, new Place(of));
    }
    middle.add(places.get(Place.Of.HEADER), BorderLayout.NORTH);
    middle.add(halves, BorderLayout.CENTER);
    frame.setName("main");
    frame.setJMenuBar(menus.bar());
    frame.add(middle, BorderLayout.CENTER);
    frame.add(places.get(Place.Of.TOOLS), BorderLayout.WEST);
    frame.add(places.get(Place.Of.SIDE), BorderLayout.EAST);
    frame.add(places.get(Place.Of.STATUS), BorderLayout.SOUTH);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent e) {
            canvas.requestFocusInWindow();
          }
        });
    stand(settings);
  }

  private void sheet(Settings settings) {
    canvas.setName("canvas");
    canvas.getAccessibleContext().setAccessibleName(Texts.of("panel.sheet"));
    canvas.getAccessibleContext().setAccessibleDescription(Texts.of("keys.hand.words"));
    canvas.setFont(UIManager.getFont("defaultFont"));
    canvas.setColours(settings.theme().canvas());
    canvas.setLayerShown(FrameLayers.TRUSS_LINE.name(), false);
    canvas.setLayerShown(FrameLayers.RAFTER_LINE.name(), false);
  }

  /** Where the window stood last, or in the middle of the screen. */
  private void stand(Settings settings) {
    frame.setMinimumSize(new Dimension(960, 640));
    Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    frame.setSize(Math.min(1560, room.width), Math.min(960, room.height));
    frame.setLocationRelativeTo(null);
    settings.window().filter(room::contains).ifPresent(frame::setBounds);
    if (settings.maximised()) {
      frame.setExtendedState(Frame.MAXIMIZED_BOTH);
    }
  }

  /** Nothing is opened: the card offers how to begin. */
  void offer() {
    title(Texts.of("app.untitled"), " – ");
    welcome.putOn();
  }

  /** Writes what is worked on into the title of the window. */
  void title(String job, String mark) {
    frame.setTitle(job + mark + Texts.of("app.name"));
  }

  /** A plan is opened: its walls stand there already. */
  void show(Plan plan) {
    title(plan.title().isBlank() ? Texts.of("app.untitled") : plan.title(), " – ");
    Bounds walls = Bounds.EMPTY;
    for (Part part : plan.parts()) {
      walls = walls.with(part.outline().bounds());
    }
    canvas.setExtent(walls, LETTERING);
    canvas.show(PlanView.walls(plan), plan.unit());
  }

  JFrame frame() {
    return frame;
  }

  PlanCanvas canvas() {
    return canvas;
  }

  Halves halves() {
    return halves;
  }

  Menus menus() {
    return menus;
  }

  Welcome welcome() {
    return welcome;
  }

  /** Puts a neighbour of the sheet into its place. */
  void fill(Place.Of place, JComponent neighbour) {
    places.get(place).fill(neighbour);
  }
}

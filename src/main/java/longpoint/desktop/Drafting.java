package longpoint.desktop;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Menus;
import longpoint.desktop.canvas.Cursors;
import longpoint.desktop.canvas.EditGestures;
import longpoint.desktop.canvas.Hand;
import longpoint.desktop.canvas.OverlayPainter;
import longpoint.desktop.canvas.PickListener;
import longpoint.desktop.canvas.PickedPaint;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.canvas.View;
import longpoint.desktop.panel.Figure;
import longpoint.desktop.panel.FigureMark;
import longpoint.desktop.panel.StatusLine;
import longpoint.drawing.Pick;
import longpoint.editor.Picker;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.Snap;
import longpoint.editor.tools.Tools;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.sheets.FrameLayers;
import longpoint.sheets.FrameLines;

/**
 * Joins the sheet with the editor: what is painted over the plan, who is told of mouse and keys,
 * and where the pointer is. Trusses and rafters, which the editor does not know, are picked here.
 */
final class Drafting {
  /** Lettering is laid out anew when a zoom has come to rest for so long, in milliseconds. */
  private static final int REST = 120;

  private final PlanCanvas canvas;
  private final Job job;
  private final Picks picks;
  private final ProblemPlaces places;
  private final StatusLine status;
  private final Timer letteringRest;
  private Optional<Figure> pickedFigure = Optional.empty();
  private Function<Double, String> lengths = String::valueOf;

  Drafting(PlanCanvas canvas, Job job, Picks picks, ProblemPlaces places, StatusLine status) {
    this.places = places;
    this.canvas = canvas;
    this.job = job;
    this.picks = picks;
    this.status = status;
    letteringRest =
        new Timer(
            REST, e -> job.letterFor(new Job.Lettering(canvas.unitsPerMm(), canvas.aroundMm())));
    letteringRest.setRepeats(false);
    picks.onChange(canvas::repaint);
  }

  /**
   * Takes the sheet in hand.
   *
   * @param letters does what a letter stands for
   * @param callOff as for {@link EditGestures}
   * @param lengths words for a length in plan units
   */
  void connect(
      Catalogue catalogue,
      Predicate<Character> letters,
      Sight sight,
      Function<Double, String> lengths,
      BooleanSupplier callOff) {
    this.lengths = lengths;
    OverlayPainter overlay = new OverlayPainter(job.runner(), canvas::getFont, canvas::pointer, "");
    canvas.setOverPaint(
        (g, view, colours) -> {
          pickedFigure.ifPresent(f -> FigureMark.paint(f, g, view, colours));
          overlay.paint(g, view, colours);
          PickedPaint.chains(picks.places(), g, view, colours.selection());
          if (!job.runner().drawing()) { // half a house has no faults yet
            places.badges().paint(g, view, colours, canvas.getFont());
          }
        });
    canvas.setGestures(
        places.before(
            new EditGestures(
                job.runner(),
                letters,
                (e, view) -> menu(e, view, catalogue),
                callOff,
                () -> Keyed.follow(canvas, job.runner()))));
    job.runner().onChange(() -> canvas.setToolCursor(Cursors.of(job.runner().shape())));
    canvas.addKeyListener(new MenuKey(canvas, e -> menu(e, canvas.view(), catalogue)));
    canvas.onFit(sight::fitted);
    canvas.onView(
        () -> {
          sight.moved();
          letteringRest.restart();
          place();
        });
    MouseAdapter mouse =
        new MouseAdapter() {
          private java.awt.Point pressed;

          @Override
          public void mouseMoved(MouseEvent e) {
            place();
          }

          @Override
          public void mouseDragged(MouseEvent e) {
            place();
          }

          @Override
          public void mousePressed(MouseEvent e) {
            pressed = e.getPoint();
          }

          @Override
          public void mouseReleased(MouseEvent e) {
            boolean still = pressed != null && pressed.distance(e.getPoint()) < Hand.TREMBLE;
            if (still && SwingUtilities.isLeftMouseButton(e)) {
              pickFrame(e);
              if (e.getClickCount() == 2 && job.runner().tool() == Tools.SELECT) {
                catalogue.task("edit.figures").perform();
              }
            }
          }
        };
    canvas.addMouseListener(mouse);
    canvas.addMouseMotionListener(mouse);
  }

  /** A truss or rafter under the pointer, where there is nothing of the plan to be had. */
  private void pickFrame(MouseEvent e) {
    boolean seen = canvas.isLayerShown(FrameLayers.TRUSS_LINE.name());
    if (!seen || job.runner().tool() != Tools.SELECT || job.runner().previewing()) {
      return;
    }
    View view = canvas.view();
    Point at = view.toPlan(e.getX(), e.getY());
    double reach = EditGestures.REACH / view.scale();
    boolean onPlan =
        Picker.pick(job.document().plan(), at, reach)
            .filter(r -> !(r instanceof Ref.OfPart))
            .isPresent();
    if (onPlan) {
      return;
    }
    Pick.at(FrameLines.of(job.picture().design().framing()), at, reach, canvas.unitsPerMm())
        .map(Pick::subject)
        .ifPresent(id -> picks.pick(Optional.of(id), PickListener.How.ALONE));
  }

  /**
   * What can be done with what lies under the pointer, which is picked first; over empty ground
   * nothing is. In the middle of a gesture, how to end it.
   */
  private void menu(MouseEvent e, View view, Catalogue catalogue) {
    if (job.runner().engaged()) {
      GestureMenu.of(job.runner()).show(canvas, e.getX(), e.getY());
      return;
    }
    Point at = view.toPlan(e.getX(), e.getY());
    Plan plan = job.document().plan();
    Selection picked = job.document().selection();
    Optional<Ref> under = Picker.pick(plan, at, EditGestures.REACH / view.scale());
    boolean within =
        under.filter(r -> picked.contains(r) || picked.parts().contains(r.part())).isPresent();
    if (!within) {
      job.runner().select(under.map(Selection::of).orElse(Selection.NONE));
    }
    Menus.popup(catalogue, WindowTasks.ON_SHEET).show(canvas, e.getX(), e.getY());
  }

  /** Says where the pointer is. */
  private void place() {
    java.awt.Point at = canvas.pointer();
    if (at == null) {
      status.place("");
      return;
    }
    // Where the pointer is held, which is where a click would count.
    Point p =
        job.runner()
            .overlay()
            .snap()
            .map(Snap::at)
            .orElseGet(() -> canvas.view().toPlan(at.x, at.y));
    status.place(Texts.of("status.place", lengths.apply(p.x()), lengths.apply(p.y())));
  }

  /** Shows on the sheet the figure picked in the panel. */
  void pick(Optional<Figure> figure) {
    pickedFigure = figure;
    canvas.repaint();
  }
}

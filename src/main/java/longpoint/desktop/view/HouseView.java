package longpoint.desktop.view;

import java.awt.BorderLayout;
import java.awt.datatransfer.Transferable;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import longpoint.desktop.Engine;
import longpoint.desktop.Job;
import longpoint.desktop.Picks;
import longpoint.desktop.Settings;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.panel.Words;
import longpoint.desktop.paper.PictureCopy;
import longpoint.desktop.paper.SheetCopy;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.solid.SolidView;
import longpoint.desktop.solid.Stand;
import longpoint.geometry.Point;
import longpoint.pipeline.Design;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.sheets.solid.RoofSolid;
import net.miginfocom.swing.MigLayout;

/** The house from outside, with its layers and parts to show or hide and its named stands. */
public final class HouseView implements BesideView {
  private final Job job;
  private final Picks picks;
  private final Settings settings;
  private final SolidView view;
  private final Strip strip = new Strip("solid");
  private final JPanel pane = new JPanel(new BorderLayout());
  private final Set<String> hiddenParts = new HashSet<>();
  private final Engine<Question, RoofSolid> engine =
      new Engine<>(HouseView::house, this::arrived, Engine::bug);
  private Optional<Question> asked = Optional.empty();
  private boolean fresh = true;

  /** Designs are told apart by identity: they never change, and are large. */
  private record Question(Design design, Set<String> hidden, Set<SolidLayer> layers) {
    Question {
      hidden = Set.copyOf(hidden);
    }

    boolean same(Question other) {
      return design == other.design && hidden.equals(other.hidden) && layers.equals(other.layers);
    }
  }

  private static RoofSolid house(Question q) {
    return ShownHouse.of(q.design(), q.hidden(), q.layers());
  }

  /**
   * @param letters does what a letter stands for elsewhere in the window
   * @param layers switches for {@link SolidLayer}, with the choice of parts
   * @param stands tasks for {@link Stand.Named}
   */
  HouseView(
      Job job,
      Picks picks,
      Settings settings,
      Predicate<Character> letters,
      List<Task> layers,
      List<Task> stands) {
    this.job = job;
    this.picks = picks;
    this.settings = settings;
    view = new SolidView(letters);
    view.getAccessibleContext().setAccessibleName(Texts.of("panel.solid"));
    view.getAccessibleContext().setAccessibleDescription(Texts.of("panel.solid.keys"));
    view.setShown(settings.solidLayers());
    view.onPick(picks::pick);
    layers.forEach(t -> strip.picture(t, ""));
    stands.forEach(t -> strip.picture(t, t == stands.get(0) ? "gapleft push" : ""));
    pane.add(strip, BorderLayout.NORTH);
    pane.add(view, BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return pane;
  }

  @Override
  public JComponent heart() {
    return view;
  }

  public SolidView view() {
    return view;
  }

  public boolean shows(SolidLayer layer) {
    return view.shows(layer);
  }

  public void turnOver(SolidLayer layer) {
    Set<SolidLayer> shown = new HashSet<>(view.shown());
    if (!shown.remove(layer)) {
      shown.add(layer);
    }
    view.setShown(shown);
    settings.setSolidLayers(shown);
    follow();
  }

  public void look(Stand.Named from) {
    view.look(from);
  }

  /** Opens the list of parts, to show or hide each. */
  public JPopupMenu chooseParts() {
    JPopupMenu popup = new JPopupMenu();
    popup.setName("solid.parts");
    popup.setLayout(new MigLayout("insets 12 16 12 20, wrap 1, gap 0 5"));
    popup.add(new Words(Words.Rank.TITLE, Texts.of("task.solid.parts")), "gapbottom 4");
    for (Part part : job.picture().design().plan().parts()) {
      String name = part.name().isBlank() ? part.id() : part.name();
      JCheckBox box = new JCheckBox(name, !hiddenParts.contains(part.id()));
      box.setName("part." + part.id());
      box.addActionListener(e -> show(part, box.isSelected() ? Shown.YES : Shown.NO));
      popup.add(box);
    }
    popup.show(strip, 0, strip.getHeight());
    return popup;
  }

  private enum Shown {
    YES,
    NO
  }

  private void show(Part part, Shown shown) {
    if (shown == Shown.YES) {
      hiddenParts.remove(part.id());
    } else {
      hiddenParts.add(part.id());
    }
    follow();
  }

  @Override
  public void follow() {
    Question question = new Question(job.picture().design(), hiddenParts, view.shown());
    if (asked.filter(question::same).isEmpty()) {
      asked = Optional.of(question);
      engine.ask(question);
    }
  }

  private void arrived(RoofSolid house) {
    if (asked.isPresent()) {
      view.setNorth(job.picture().design().plan().particulars().north().orElse(0.0));
      if (fresh) {
        fresh = false;
        lookAtWork(job.picture().design().plan());
      }
      view.show(house);
    }
  }

  /** A wing behind a house that stands is seen from behind. */
  private void lookAtWork(Plan plan) {
    double[] all = middle(plan, part -> true);
    double[] work = middle(plan, part -> !part.existing());
    if (plan.parts().stream().anyMatch(Part::existing)
        && plan.parts().stream().anyMatch(part -> !part.existing())) {
      view.lookFromCornerToward(work[0] - all[0], work[1] - all[1]);
    }
  }

  /** Of the corners of some parts, as far as there are any. */
  private static double[] middle(Plan plan, Predicate<Part> which) {
    List<Point> corners =
        plan.parts().stream()
            .filter(which)
            .flatMap(part -> plan.sides(part).stream())
            .map(side -> side.wall().from())
            .toList();
    return new double[] {
      corners.stream().mapToDouble(Point::x).average().orElse(0),
      corners.stream().mapToDouble(Point::y).average().orElse(0)
    };
  }

  @Override
  public void showPicks() {
    view.setPicked(picks.subjects());
  }

  @Override
  public void refresh() {
    strip.refresh();
  }

  @Override
  public void startOver() {
    view.show(RoofSolid.NONE);
    fresh = true;
    hiddenParts.clear();
    asked = Optional.empty();
  }

  @Override
  public void dress(CanvasColours colours, double lettering) {
    view.setColours(colours);
  }

  @Override
  public void step(int by) {
    Stand.Named[] stands = Stand.Named.values();
    turn = Math.floorMod(turn + by, stands.length);
    view.look(stands[turn]);
  }

  private int turn = Stand.Named.CORNER.ordinal();

  @Override
  public Optional<Transferable> copied(SheetCopy.As as) {
    return as == SheetCopy.As.PICTURE
        ? Optional.of(new PictureCopy(view.paint(DENSE)))
        : Optional.empty();
  }

  /** A copied picture is so many times as fine as the screen. */
  private static final double DENSE = 2;

  @Override
  public void close() {
    engine.close();
  }
}

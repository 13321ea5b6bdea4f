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
import longpoint.pipeline.Design;
import longpoint.plan.Part;
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
  private Optional<Design> made = Optional.empty();

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
    again();
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
    again();
  }

  private void again() {
    made = Optional.empty();
    follow();
  }

  @Override
  public void follow() {
    Design design = job.picture().design();
    if (made.filter(d -> d == design).isEmpty()) {
      view.show(house(design));
      made = Optional.of(design);
    }
  }

  private RoofSolid house(Design design) {
    RoofSolid house = RoofSolid.of(design.plan(), design.surface());
    if (view.shows(SolidLayer.FRAME)) {
      house = house.with(design.framing(), design.surface());
    }
    if (view.shows(SolidLayer.DECK)) {
      house = house.with(design.deck());
    }
    if (hiddenParts.isEmpty()) {
      return house;
    }
    Set<String> hidden = hidden(design);
    return house.keeping(s -> !hidden.contains(s));
  }

  /** Everything that belongs to hidden parts alone. */
  private Set<String> hidden(Design design) {
    Set<String> hidden = new HashSet<>();
    for (Part part : design.plan().parts()) {
      if (hiddenParts.contains(part.id())) {
        design.plan().sides(part).forEach(s -> hidden.add(s.id()));
      }
    }
    design.surface().lines().stream()
        .filter(l -> hidden.containsAll(l.planes()))
        .forEach(l -> hidden.add(l.id()));
    design.framing().trusses().stream()
        .filter(t -> hiddenParts.contains(t.part()))
        .forEach(t -> hidden.add(t.id()));
    design.framing().rafters().stream()
        .filter(r -> hiddenParts.contains(r.part()))
        .forEach(r -> hidden.add(r.mark()));
    design.deck().planes().stream()
        .filter(d -> hidden.contains(d.plane()))
        .flatMap(d -> d.pieces().stream())
        .forEach(p -> hidden.add(p.id()));
    return hidden;
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
    hiddenParts.clear();
    made = Optional.empty();
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
    // Nothing of it works on its own.
  }
}

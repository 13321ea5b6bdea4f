package longpoint.desktop;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Task;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.solid.SolidPane;
import longpoint.desktop.solid.SolidPickListener;
import longpoint.desktop.solid.SolidView;
import longpoint.desktop.solid.Stand;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.pipeline.Design;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.sheets.solid.RoofSolid;

/**
 * The sheet with the house beside it, in step: both show the newest design and the same selection.
 * The house costs nothing while it is not shown.
 */
final class Beside {
  /** Share of the room the sheet keeps when the house is first shown. */
  private static final double SHEET = 0.55;

  private final Job job;
  private final Settings settings;
  private final JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true);
  private final SolidView view;
  private final SolidPane pane;
  private Optional<Design> made = Optional.empty();
  private Runnable changed = () -> {};
  private boolean framed;

  /**
   * @param letters as for the sheet: does what a letter stands for
   */
  Beside(JComponent sheet, Job job, Settings settings, Predicate<Character> letters) {
    this.job = job;
    this.settings = settings;
    view = new SolidView(letters);
    view.getAccessibleContext().setAccessibleName(Texts.of("panel.solid"));
    view.getAccessibleContext().setAccessibleDescription(Texts.of("panel.solid.keys"));
    pane = new SolidPane(view);
    split.setName("beside");
    split.setBorder(BorderFactory.createEmptyBorder());
    split.setResizeWeight(0.5);
    split.setLeftComponent(sheet);
    split.setDividerSize(0);
    view.setShown(settings.solidLayers());
    view.onPick(this::picked);
    job.onPicture(this::follow);
    job.runner().onChange(this::showSelection);
  }

  JComponent component() {
    return split;
  }

  SolidView view() {
    return view;
  }

  /**
   * Puts the buttons in, and shows the house if it was shown last.
   *
   * @param changed called whenever it is shown, put away, or shows other things
   */
  void furnish(Catalogue catalogue, Theme theme, Runnable changed) {
    this.changed = changed;
    pane.furnish(tasks(catalogue, "solid.show."), tasks(catalogue, "solid.from."));
    dress(theme);
    if (settings.solidShown()) {
      open();
    }
  }

  private static List<Task> tasks(Catalogue catalogue, String stem) {
    return catalogue.all().stream().filter(t -> t.id().startsWith(stem)).toList();
  }

  boolean isShown() {
    return pane.getParent() != null;
  }

  /** Shows the house, or puts it away. */
  void turnOver() {
    if (isShown()) {
      settings.setSheetShare(split.getDividerLocation() / (double) Math.max(1, split.getWidth()));
      split.setRightComponent(null);
      split.setDividerSize(0);
      made = Optional.empty();
    } else {
      open();
    }
    settings.setSolidShown(isShown());
    split.revalidate();
    changed.run();
  }

  private void open() {
    split.setRightComponent(pane);
    split.setDividerSize(6);
    double share = settings.sheetShare().orElse(SHEET);
    split.setResizeWeight(share);
    if (split.getWidth() > 0) {
      split.setDividerLocation(share);
    } else {
      SwingUtilities.invokeLater(() -> split.setDividerLocation(share));
    }
    follow();
    showSelection();
  }

  boolean shows(SolidLayer layer) {
    return view.shows(layer);
  }

  void turnOver(SolidLayer layer) {
    Set<SolidLayer> shown = new HashSet<>(view.shown());
    if (!shown.remove(layer)) {
      shown.add(layer);
    }
    view.setShown(shown);
    settings.setSolidLayers(shown);
    follow();
    changed.run();
  }

  void look(Stand.Named from) {
    view.look(from);
  }

  /** Brings the buttons up to date. */
  void refresh() {
    pane.refresh();
  }

  /** Another plan: all of its house. */
  void startOver() {
    view.show(RoofSolid.NONE);
    made = Optional.empty();
  }

  void dress(Theme theme) {
    SwingUtilities.updateComponentTreeUI(pane);
    view.setColours(theme.canvas());
  }

  private void follow() {
    if (!isShown()) {
      return;
    }
    Design design = job.picture().design();
    boolean frame = view.shows(SolidLayer.FRAME);
    if (made.filter(d -> d == design).isEmpty() || frame != framed) {
      RoofSolid house = RoofSolid.of(design.plan(), design.surface());
      view.show(frame ? house.with(design.framing(), design.surface()) : house);
      made = Optional.of(design);
      framed = frame;
    }
  }

  private void showSelection() {
    if (!isShown()) {
      return;
    }
    Plan plan = job.document().plan();
    Set<String> subjects = new HashSet<>();
    for (Ref.OfSide side : job.document().selection().sides(plan)) {
      subjects.add(Side.id(side.part(), side.side()));
    }
    view.setPicked(subjects);
  }

  private void picked(Optional<String> subject, SolidPickListener.How how) {
    Optional<Ref> ref = subject.flatMap(this::ref);
    Selection now = job.document().selection();
    job.runner()
        .select(
            switch (how) {
              case ALONE -> ref.map(r -> Selection.of(r)).orElse(Selection.NONE);
              case TOO -> ref.map(now::toggled).orElse(now);
              case WHOLE_PART -> ref.map(r -> Selection.of(Ref.part(r.part()))).orElse(now);
            });
  }

  /** A wall or plane is a side of the plan; a truss or rafter belongs to its part. */
  private Optional<Ref> ref(String subject) {
    return Sight.ref(job.document().plan(), subject)
        .or(() -> stick(subject).map(Ref::part).filter(r -> r.in(job.document().plan())));
  }

  private Optional<String> stick(String subject) {
    var framing = job.picture().design().framing();
    return framing.trusses().stream()
        .filter(t -> t.id().equals(subject))
        .map(Truss::part)
        .findFirst()
        .or(
            () ->
                framing.rafters().stream()
                    .filter(r -> r.mark().equals(subject))
                    .map(Rafter::part)
                    .findFirst());
  }
}

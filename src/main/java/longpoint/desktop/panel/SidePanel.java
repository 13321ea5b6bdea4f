package longpoint.desktop.panel;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSeparator;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.Timer;
import javax.swing.UIManager;
import longpoint.desktop.Job;
import longpoint.desktop.Texts;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.pipeline.Design;
import longpoint.plan.Part;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import net.miginfocom.swing.MigLayout;

/** Down the right edge: what is selected, its figures, and the problems of the plan. */
public final class SidePanel extends JPanel {
  private static final long serialVersionUID = 1;

  /** From one look of the figures to the next while something is dragged. */
  private static final int PACE_MILLIS = 100;

  private static final int WIDTH_IN_LETTERS = 26;

  private final transient Job job;
  private final transient Timer pace = new Timer(PACE_MILLIS, e -> follow());
  private transient Shown figured;
  private LengthDisplay display = LengthDisplay.OF_PLAN;
  private final Properties properties;
  private final FiguresPanel figures;
  private final ProblemsPanel problems;
  private final transient ProblemsPanel.Places places;
  private final Words figuresTitle = new Words(Words.Rank.TITLE, "");
  private final Words problemsTitle = new Words(Words.Rank.TITLE, Texts.of("state.working"));

  /**
   * @param picked told which figure is picked
   * @param places of the problems
   */
  public SidePanel(Job job, Consumer<Optional<Figure>> picked, ProblemsPanel.Places places) {
    super(
        new MigLayout(
            "insets 14 0 8 0, gap 0, fill, wrap 1, hidemode 3",
            "[grow,fill]",
            "[shrinkprio 100][][][150::,grow,fill,shrinkprio 300][][][shrinkprio 200]"));
    this.job = job;
    properties = new Properties(job.runner());
    figures = new FiguresPanel(picked);
    this.places = places;
    problems = new ProblemsPanel(places);
    AsWideAsSeen padded = new AsWideAsSeen();
    padded.setLayout(new MigLayout("insets 0 14 12 16, fillx", "[0::,grow,fill]"));
    padded.add(properties);
    JScrollPane scroll =
        new JScrollPane(
            padded,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    figuresTitle.setName("figures.title");
    problemsTitle.setName("problems.title");
    add(scroll, "hmin 140");
    add(new JSeparator());
    add(figuresTitle, "gap 14 14 12 6");
    add(figures, "gap 6 6 0 0");
    add(new JSeparator());
    add(problemsTitle, "gap 14 14 10 6");
    add(problems, "gap 6 6 0 0, hmin 84, hmax 200");
    pace.setRepeats(false);
    updateUI();
  }

  /** Puts the keyboard where the figures of what is picked are typed. */
  public void edit() {
    properties.edit();
  }

  /** Escape in a field that has nothing to put back leaves the panel. */
  public void onLeave(Runnable leave) {
    registerKeyboardAction(
        e -> leave.run(),
        KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
        WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
  }

  public LengthDisplay display() {
    return display;
  }

  /** Prints lengths another way. */
  public void setDisplay(LengthDisplay display) {
    this.display = display;
    showFigures();
  }

  /** Follows selection and plan. */
  public void update() {
    properties.update();
    if (!job.runner().previewing()) {
      showFigures();
      followProblems();
    }
  }

  private void followProblems() {
    Set<String> picked = new HashSet<>();
    for (Ref ref : job.document().selection().refs()) {
      picked.add(ref instanceof Ref.OfSide s ? Side.id(s.part(), s.side()) : ref.part());
    }
    problems.about(picked);
  }

  /**
   * Follows the engine. In the middle of a gesture not every step: nobody reads figures that change
   * sixty times a second, and laying them out would hold up the sheet.
   */
  public void picture() {
    if (job.runner().previewing()) {
      if (!pace.isRunning()) {
        pace.start();
      }
      return;
    }
    pace.stop();
    follow();
  }

  private void follow() {
    showFigures();
    if (job.isSketch() && !job.runner().previewing()) {
      return; // the list would only come and go
    }
    List<Problem> now = new ArrayList<>(job.picture().design().problems());
    now.addAll(job.notes());
    now.sort(Comparator.comparing(Problem::level));
    places.listed(now);
    if (job.runner().previewing() && problems.like(now)) {
      return; // only their figures differ, and these are still on the move
    }
    boolean same = problems.showing(now);
    problems.show(now);
    followProblems();
    problems.setVisible(!now.isEmpty());
    problemsTitle.setText(
        now.isEmpty()
            ? Texts.of("problems.none")
            : Texts.of(
                now.get(0).level() == Problem.Level.NOTE ? "problems.notes" : "problems.title",
                now.size()));
    if (!same) {
      revalidate();
    }
  }

  private void showFigures() {
    Selection selection = job.document().selection();
    Selection shown = selection.touchedParts().isEmpty() ? Selection.NONE : selection;
    Shown now = new Shown(job.picture().design(), shown, display);
    if (!now.sameAs(figured)) {
      figured = now;
      boolean blank = now.design.plan().parts().isEmpty();
      figures.show(
          Figure.of(now.design, shown, display),
          Texts.of(blank ? "figures.none" : "figures.nothing"));
    }
    figuresTitle.setText(scope(selection));
  }

  /** What the figures were last made of; a design is told by identity. */
  private record Shown(Design design, Selection selection, LengthDisplay display) {
    boolean sameAs(Shown other) {
      return other != null
          && design == other.design
          && display == other.display
          && selection.equals(other.selection);
    }
  }

  private String scope(Selection selection) {
    if (selection.touchedParts().isEmpty()) {
      return Texts.of("figures.of.roof");
    }
    return selection.touchedParts().size() == 1
        ? Texts.of(
            "figures.of",
            job.document().plan().part(selection.touchedParts().get(0)).map(Part::name).orElse(""))
        : Texts.of("figures.of.selected");
  }

  /** As wide as a row of figures needs at the present size of lettering, whatever is shown. */
  public static int width() {
    return WIDTH_IN_LETTERS * UIManager.getFont("defaultFont").getSize();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBackground(UIManager.getColor("Longpoint.card"));
    setBorder(BorderFactory.createMatteBorder(0, 1, 0, 0, UIManager.getColor("Longpoint.rule")));
  }
}

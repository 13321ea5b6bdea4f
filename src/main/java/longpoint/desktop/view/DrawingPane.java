package longpoint.desktop.view;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.datatransfer.Transferable;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.Timer;
import javax.swing.UIManager;
import longpoint.desktop.Engine;
import longpoint.desktop.Job;
import longpoint.desktop.Picks;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.canvas.DrawingCanvas;
import longpoint.desktop.panel.Words;
import longpoint.desktop.paper.DrawnPage;
import longpoint.desktop.paper.SheetCopy;
import longpoint.drawing.Drawing;
import longpoint.pipeline.Design;

/**
 * One drawing of several, chosen from a list or by what is picked elsewhere. It is laid out off the
 * event thread for the zoom it is seen at.
 */
final class DrawingPane implements BesideView {
  /** Lettering is laid out anew when a zoom has come to rest for so long, in milliseconds. */
  private static final int REST = 120;

  private static final String DRAWN = "drawn";
  private static final String NOTHING = "nothing";

  /** Designs are told apart by identity: they never change, and are large. */
  private record Question(Design design, String id, double unitsPerMm) {
    boolean same(Question other) {
      return design == other.design && id.equals(other.id) && unitsPerMm == other.unitsPerMm;
    }
  }

  private record Answer(Question question, Drawing drawing) {}

  private final Job job;
  private final Picks picks;
  private final DrawingSource source;
  private final Strip strip;
  private final DrawingCanvas canvas;
  private final JComboBox<DrawingSource.Item> chooser = new JComboBox<>();
  private final CardLayout cards = new CardLayout();
  private final JPanel middle = new JPanel(cards);
  private final JPanel pane = new JPanel(new BorderLayout());
  private final Engine<Question, Answer> engine;
  private final Timer rest = new Timer(REST, e -> ask());
  private Optional<Question> asked = Optional.empty();
  private Optional<Design> listed = Optional.empty();
  private boolean filling;

  /**
   * @param name of the view, as in its texts
   * @param steps tasks that go to the drawing before and the one after
   */
  DrawingPane(
      Showing name,
      DrawingSource source,
      Job job,
      Picks picks,
      Predicate<Character> letters,
      List<Task> steps) {
    this.job = job;
    this.picks = picks;
    this.source = source;
    strip = new Strip(name.key());
    canvas = new DrawingCanvas(name.key(), letters);
    canvas.getAccessibleContext().setAccessibleName(Texts.of("task.beside." + name.key()));
    canvas.getAccessibleContext().setAccessibleDescription(Texts.of("panel.drawing.keys"));
    canvas.setFont(UIManager.getFont("defaultFont"));
    engine = new Engine<>(this::draw, this::arrived, Engine::bug);
    rest.setRepeats(false);
    canvas.onView(rest::restart);
    canvas.onPick(picks::pick);
    chooser.setName(name.key() + ".chooser");
    chooser.getAccessibleContext().setAccessibleName(Texts.of("task.beside." + name.key()));
    chooser.setToolTipText(Texts.of("task.beside." + name.key() + ".tip"));
    chooser.addActionListener(e -> chosen());
    strip.picture(steps.get(0), "");
    strip.picture(steps.get(1), "");
    strip.add(chooser, "growx, pushx, wmin 80, gapleft 6");
    Words nothing = new Words(Words.Rank.QUIET, Texts.of("beside." + name.key() + ".nothing"));
    nothing.setHorizontalAlignment(SwingConstants.CENTER);
    middle.add(canvas, DRAWN);
    middle.add(nothing, NOTHING);
    pane.add(strip, BorderLayout.NORTH);
    pane.add(middle, BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return pane;
  }

  @Override
  public JComponent heart() {
    return canvas;
  }

  DrawingCanvas canvas() {
    return canvas;
  }

  @Override
  public void follow() {
    Design design = job.picture().design();
    // A sketch has no deck yet: what stands there stays until the rest is worked out.
    boolean toCome = job.isSketch() && source.items(design).isEmpty();
    if (!toCome && listed.filter(d -> d == design).isEmpty()) {
      listed = Optional.of(design);
      list(design);
      ask();
    }
  }

  /** Keeps the choice if the new design still has it. */
  private void list(Design design) {
    List<DrawingSource.Item> items = source.items(design);
    String kept = chosenId().or(() -> source.wanted(design, picks)).orElse("");
    filling = true;
    chooser.setModel(new DefaultComboBoxModel<>(items.toArray(DrawingSource.Item[]::new)));
    choose(kept);
    filling = false;
    cards.show(middle, items.isEmpty() ? NOTHING : DRAWN);
  }

  private void choose(String id) {
    IntStream.range(0, chooser.getItemCount())
        .filter(i -> chooser.getItemAt(i).id().equals(id))
        .findFirst()
        .ifPresent(chooser::setSelectedIndex);
  }

  private Optional<String> chosenId() {
    return Optional.ofNullable((DrawingSource.Item) chooser.getSelectedItem())
        .map(DrawingSource.Item::id);
  }

  private void chosen() {
    if (!filling) {
      canvas.startOver();
      ask();
    }
  }

  @Override
  public void step(int by) {
    int to = chooser.getSelectedIndex() + by;
    if (to >= 0 && to < chooser.getItemCount()) {
      chooser.setSelectedIndex(to);
    }
  }

  private void ask() {
    Optional<String> id = chosenId();
    if (id.isEmpty() || listed.isEmpty()) {
      return;
    }
    Question question = new Question(listed.get(), id.get(), canvas.unitsPerMm());
    if (asked.filter(question::same).isEmpty()) {
      asked = Optional.of(question);
      engine.ask(question);
    }
  }

  private Answer draw(Question q) {
    return new Answer(q, source.draw(q.design(), q.id(), q.unitsPerMm()));
  }

  private void arrived(Answer answer) {
    boolean late = asked.filter(q -> q.id().equals(answer.question().id())).isEmpty();
    if (!late && listed.isPresent()) {
      canvas.show(answer.drawing(), answer.question().unitsPerMm());
    }
  }

  @Override
  public void showPicks() {
    Design design = job.picture().design();
    source
        .wanted(design, picks)
        .filter(id -> !chosenId().equals(Optional.of(id)))
        .ifPresent(this::choose);
    canvas.setPicked(picks.subjects());
  }

  @Override
  public void refresh() {
    strip.refresh();
  }

  @Override
  public void startOver() {
    listed = Optional.empty();
    asked = Optional.empty();
    canvas.startOver();
    filling = true;
    chooser.setModel(new DefaultComboBoxModel<>());
    filling = false;
  }

  @Override
  public void dress(CanvasColours colours, double lettering) {
    canvas.setFont(UIManager.getFont("defaultFont"));
    canvas.setColours(colours);
    canvas.setLetteringZoom(lettering);
    rest.restart();
  }

  @Override
  public Optional<Transferable> copied(SheetCopy.As as) {
    Drawing drawing = canvas.drawing();
    return drawing.marks().isEmpty()
        ? Optional.empty()
        : Optional.of(new SheetCopy(DrawnPage.of(drawing, canvas.laidOutFor(), l -> true), as));
  }

  @Override
  public void close() {
    rest.stop();
    engine.close();
  }
}

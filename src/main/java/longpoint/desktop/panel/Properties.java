package longpoint.desktop.panel;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.text.JTextComponent;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.ToolRunner;
import longpoint.plan.Plan;

/**
 * Shows the form of what is selected: sides, parts, a note or the like, or the plan when nothing
 * is. Empty until it is first brought up to date.
 */
public final class Properties extends JPanel {
  private static final long serialVersionUID = 1;

  /** A form about something. */
  interface Subject {
    /** Equal for forms about the same things. */
    Object key();

    JComponent view();

    /** Brings the form up to date with the plan. */
    void update();
  }

  private final transient ToolRunner runner;
  private final transient Folds folds = new Folds();
  private transient Subject subject;
  private transient Plan seen;

  public Properties(ToolRunner runner) {
    super(new BorderLayout());
    this.runner = runner;
    setOpaque(false);
  }

  /** Follows the selection and the plan. */
  public void update() {
    Selection selection = runner.document().selection();
    Object wanted = key(selection);
    if (subject == null || !subject.key().equals(wanted)) {
      subject = subject(selection);
      removeAll();
      add(subject.view(), BorderLayout.CENTER);
      revalidate();
      repaint();
    } else if (runner.document().plan() != seen) {
      subject.update(); // the plan stays as it is until a drag has ended
    }
    seen = runner.document().plan();
  }

  /** Puts the keyboard into the field that one most likely wants to type into. */
  void edit() {
    for (String name : List.of("length", "name", "slope", "note", "standsOff", "title")) {
      Optional<JTextComponent> field = field(this, name);
      if (field.isPresent()) {
        field.get().requestFocusInWindow();
        field.get().selectAll();
        return;
      }
    }
  }

  private static Optional<JTextComponent> field(Container in, String name) {
    for (Component c : in.getComponents()) {
      Optional<JTextComponent> found =
          c instanceof JTextComponent text && name.equals(c.getName()) && c.isShowing()
              ? Optional.of(text)
              : c instanceof Container inner ? field(inner, name) : Optional.empty();
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static List<Ref.OfSide> sides(Selection selection) {
    return selection.refs().stream()
        .filter(Ref.OfSide.class::isInstance)
        .map(Ref.OfSide.class::cast)
        .toList();
  }

  private static Object key(Selection selection) {
    if (!sides(selection).isEmpty()) {
      return sides(selection);
    }
    if (!selection.touchedParts().isEmpty()) {
      return selection.touchedParts();
    }
    return selection.besides().stream().findFirst().<Object>map(Properties::key).orElse("plan");
  }

  private static String key(Ref besides) {
    if (besides instanceof Ref.OfNote note) {
      return "note " + note.note();
    }
    return besides instanceof Ref.OfDimension d ? "dimension " + d.dimension() : "backdrop";
  }

  private Subject subject(Selection selection) {
    if (!sides(selection).isEmpty()) {
      return new SideForm(runner, sides(selection));
    }
    if (!selection.touchedParts().isEmpty()) {
      return new PartForm(runner, selection.touchedParts(), folds);
    }
    return selection.besides().stream()
        .findFirst()
        .map(this::besides)
        .orElseGet(() -> new PlanForm(runner, folds));
  }

  private Subject besides(Ref ref) {
    if (ref instanceof Ref.OfNote note) {
      return new NoteForm(runner, note.note());
    }
    return ref instanceof Ref.OfDimension d
        ? new DimensionForm(runner, d.dimension())
        : new BackdropForm(runner);
  }
}

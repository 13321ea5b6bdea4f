package longpoint.editor;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import longpoint.plan.Plan;

/**
 * The plan being worked on, what is selected in it, and how it came about. Anyone may look and
 * listen; only the {@link ToolRunner} changes it. Meant for one thread.
 */
public final class Document {
  private History history;
  private Plan saved;
  private Selection selection = Selection.NONE;
  private Optional<Run> running = Optional.empty();

  /** Steps that undo takes together, such as one arrow key pressed again and again. */
  private record Run(String name, Selection selection) {}

  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

  /** A document that starts from a plan and counts as saved. */
  public Document(Plan plan) {
    history = new History(Objects.requireNonNull(plan));
    saved = plan;
  }

  /** The settled plan; a gesture under way does not show here. */
  public Plan plan() {
    return history.plan();
  }

  public Selection selection() {
    return selection;
  }

  /** Whether the plan differs from the one last saved or opened. */
  public boolean isDirty() {
    return plan() != saved;
  }

  /** What undo would take back, in the user's words. */
  public Optional<String> undoName() {
    return history.undoName();
  }

  /** What redo would bring back, in the user's words. */
  public Optional<String> redoName() {
    return history.redoName();
  }

  /** Everything done so far that undo can take back, oldest first. */
  public List<String> done() {
    return history.done();
  }

  /** Calls the listener after every change of plan, selection or saved mark. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  void commit(String name, Plan plan) {
    history.add(name, plan);
    settle();
  }

  /** As {@link #commit}, but a run of the same step of the same things is undone at once. */
  void amend(String name, Plan plan) {
    Optional<Run> run = Optional.of(new Run(name, selection));
    if (run.equals(running) && plan() != saved) {
      history.replace(plan);
    } else {
      history.add(name, plan);
    }
    settle();
    running = run;
  }

  void undo() {
    history.undo();
    settle();
  }

  void redo() {
    history.redo();
    settle();
  }

  void select(Selection selection) {
    Selection kept = selection.within(plan());
    if (!kept.equals(this.selection)) {
      this.selection = kept;
      tell();
    }
  }

  void open(Plan plan) {
    history = new History(plan);
    saved = plan;
    settle();
  }

  void recover(Plan plan) {
    history = new History(plan);
    saved = null;
    settle();
  }

  void markSaved(Plan plan) {
    saved = plan;
    tell();
  }

  private void settle() {
    running = Optional.empty();
    selection = selection.within(plan());
    tell();
  }

  private void tell() {
    listeners.forEach(Runnable::run);
  }
}

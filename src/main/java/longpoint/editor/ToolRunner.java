package longpoint.editor;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import longpoint.plan.Plan;

/**
 * Feeds what the user does to the tool in hand and puts what comes of it into the document. It is
 * the only one that changes the document. Meant for one thread.
 *
 * <p>Typed figures: while the state {@link #wantsText wants} some, the window passes characters to
 * {@link #type}; Backspace then takes back a character and Enter hands the figures to the state. A
 * figure that cannot be read stays as typed and {@link #entryProblem} says what is wrong with it.
 * What Enter would make of the figures shows as they are typed.
 *
 * <p>Escape backs out one step: first the typed text, then the gesture step by step, then to the
 * home tool, then the selection.
 */
public final class ToolRunner {
  private final Document document;
  private final Tool home;
  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
  private Settings settings;
  private Tool tool;
  private ToolState state;
  private Optional<Plan> preview = Optional.empty();
  private final Foresight foreseen = new Foresight();
  private final Refusal refusal = new Refusal();
  private final Typing typing = new Typing();
  private Optional<Left> left = Optional.empty();

  /**
   * @param home the tool that Escape ends in
   */
  public ToolRunner(Document document, Tool home) {
    this.document = Objects.requireNonNull(document);
    this.home = Objects.requireNonNull(home);
    this.settings = Settings.of(document.plan().unit());
    this.tool = home;
    this.state = home.start();
  }

  // What to show

  public Document document() {
    return document;
  }

  /**
   * The plan to show: what the typed figures would make, the preview of a gesture under way, or the
   * settled plan.
   */
  public Plan shown() {
    return foreseen.plan().or(() -> preview).orElse(document.plan());
  }

  /** Whether {@link #shown} is not settled yet. */
  public boolean previewing() {
    return shown() != document.plan();
  }

  /** Whether a gesture is under way, which Escape and undo take back step by step. */
  public boolean engaged() {
    return !typing.isEmpty() || state.underWay();
  }

  /** Whether undo would take up an outline that another tool has interrupted. */
  public boolean interrupted() {
    return left.isPresent();
  }

  private void takeUp(Left drawn) {
    left = Optional.empty();
    tool = drawn.tool();
    state = drawn.state();
    carry(state.again(scene()).outcome());
  }

  /** Whether a part is being drawn that is not in the settled plan. */
  public boolean drawing() {
    return shown().parts().size() > document.plan().parts().size();
  }

  /** What the pointer looks like. */
  public PointerShape shape() {
    return state.shape(scene());
  }

  public Overlay overlay() {
    return foreseen.overlay(state, scene());
  }

  /**
   * A sentence: why the last thing could not be done, how the typed figures are read, or what the
   * pointer will do next.
   */
  public String status() {
    return entryProblem()
        .or(this::refusal)
        .or(this::understood)
        .orElseGet(() -> state.status(scene()));
  }

  private Optional<String> understood() {
    return reading().filter(e -> foreseen.isPresent()).map(e -> Naming.read(e, document.plan()));
  }

  public Tool tool() {
    return tool;
  }

  public ToolState state() {
    return state;
  }

  public Settings settings() {
    return settings;
  }

  /** Why the last thing could not be done, while it is worth reading. */
  public Optional<String> refusal() {
    return refusal.why();
  }

  /** What has been typed and not yet confirmed. */
  public String entry() {
    return typing.text();
  }

  /** What is wrong with the typed text, in words; empty when nothing is known to be. */
  public Optional<String> entryProblem() {
    return typing.problem();
  }

  /** Whether characters typed now are figures or words for the tool. */
  public boolean wantsText() {
    return !state.wants(scene()).isEmpty();
  }

  /** Whether figures typed now are an angle, which may be below zero. */
  public boolean wantsAngle() {
    return state.wants(scene()).contains(Entry.Kind.ANGLE);
  }

  /** Whether every character typed now is part of words, letters of tools too. */
  public boolean wantsWords() {
    return state.wants(scene()).contains(Entry.Kind.WORDS);
  }

  /** Calls the listener whenever anything of the above may have changed. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  // What the user does

  /** Takes a tool in hand; a gesture under way is dropped, an outline until undo takes it up. */
  public void choose(Tool tool) {
    left = Left.of(this.tool, state).filter(l -> tool != this.tool);
    this.tool = Objects.requireNonNull(tool);
    rest();
    tell();
  }

  public void use(Settings settings) {
    this.settings = Objects.requireNonNull(settings);
    tell();
  }

  public void handle(Event event) {
    if (event instanceof Event.Pressing pressing) {
      press(pressing);
    } else {
      feed(event);
    }
    tell();
  }

  /**
   * Adds characters to the typed entry.
   *
   * @return whether the tool wants figures now; if not, nothing was taken
   */
  public boolean type(String text) {
    if (!wantsText()) {
      refusal.say(Messages.text("typed.nowhere"));
      tell();
      return false;
    }
    typing.add(text);
    foreseen.work(reading(), state, scene());
    tell();
    return true;
  }

  /** Carries out a command on the settled plan; a gesture under way is dropped, no outline is. */
  public void apply(Command command) {
    Optional<Left> drawn = Left.of(tool, state);
    rest();
    carry(command.on(document.plan()));
    drawn.ifPresent(this::takeUp);
    tell();
  }

  public void select(Selection selection) {
    document.select(selection);
    tell();
  }

  /** In the middle of a gesture its last step is taken back, else the last thing done. */
  public void undo() {
    if (engaged()) {
      backOut();
    } else if (left.isPresent()) {
      takeUp(left.get());
    } else {
      rest();
      document.undo();
    }
    tell();
  }

  public void redo() {
    if (!engaged()) { // what is being drawn is not to be lost
      rest();
      document.redo();
      tell();
    }
  }

  /** Starts over with a plan from a file: it counts as saved and its history is empty. */
  public void open(Plan plan) {
    rest();
    left = Optional.empty();
    if (plan.unit() != document.plan().unit()) {
      settings = settings.in(plan.unit());
    }
    document.open(plan);
    tell();
  }

  /** Starts over with a plan rescued after a crash: it counts as not saved. */
  public void recover(Plan plan) {
    open(plan);
    document.recover(plan);
    tell();
  }

  /**
   * Marks a plan as the one in the file.
   *
   * @param plan what was written, which need not be the present plan any more
   */
  public void saved(Plan plan) {
    document.markSaved(plan);
    tell();
  }

  // Steps

  private void press(Event.Pressing pressing) {
    switch (pressing.key()) {
      case ESCAPE -> backOut();
      case ENTER -> {
        if (typing.text().isBlank()) {
          pressed(pressing);
        } else {
          confirm();
        }
      }
      case BACKSPACE -> {
        if (typing.isEmpty()) {
          feed(pressing);
        } else {
          typing.takeBack();
          foreseen.work(reading(), state, scene());
        }
      }
      default -> pressed(pressing);
    }
  }

  /** A key that the tool has no use for stands for the mouse, or for what it does elsewhere. */
  private void pressed(Event.Pressing pressing) {
    boolean idle = state.on(pressing, scene()).equals(Step.to(state));
    if (idle && pressing.key() == Event.Key.DELETE && !engaged()) {
      refusal.forget();
      carry(PlanCommands.delete(document.selection()).on(document.plan()));
    } else {
      Optional<Event> stands = KeyHand.stands(pressing, state.keyed(scene()), scene());
      feed(idle ? stands.orElse(pressing) : pressing);
    }
  }

  private void backOut() {
    refusal.forget();
    if (!typing.isEmpty()) {
      clearEntry();
      return;
    }
    preview = Optional.empty();
    Optional<ToolState> back = state.back();
    if (back.isPresent()) {
      state = back.get();
      carry(state.again(scene()).outcome());
    } else if (tool != home) {
      tool = home;
      rest();
    } else {
      document.select(Selection.NONE);
    }
  }

  private void confirm() {
    Optional<Entry> taken = typing.take(state.wants(scene()), document.plan().unit());
    if (taken.isPresent()) {
      clearEntry();
      feed(new Event.Typed(taken.get()));
    }
  }

  private void feed(Event event) {
    refusal.forgetUnlessRead(event);
    Step step = state.on(event, scene());
    state = step.next();
    if (!wantsText()) {
      clearEntry();
    }
    carry(step.outcome());
    step.selection().ifPresent(document::select);
    foreseen.work(reading(), state, scene());
  }

  /** The typed figures so far, where they can be read. */
  private Optional<Entry> reading() {
    return typing.read(state.wants(scene()), document.plan().unit());
  }

  private void carry(Outcome outcome) {
    if (outcome instanceof Outcome.Preview shown) {
      preview = Optional.of(shown.plan());
    } else if (outcome instanceof Outcome.Commit commit) {
      preview = Optional.empty();
      left = Optional.empty();
      document.commit(commit.name(), commit.plan());
    } else if (outcome instanceof Outcome.Amend amend) {
      preview = Optional.empty();
      left = Optional.empty();
      document.amend(amend.name(), amend.plan());
    } else if (outcome instanceof Outcome.Revert) {
      preview = Optional.empty();
    } else if (outcome instanceof Outcome.Refuse refused) {
      preview = Optional.empty();
      refusal.say(refused.why());
    }
  }

  private void rest() {
    state = tool.start();
    preview = Optional.empty();
    refusal.forget();
    clearEntry();
  }

  private void clearEntry() {
    foreseen.forget();
    typing.clear();
  }

  private Scene scene() {
    return new Scene(document.plan(), document.selection(), settings);
  }

  private void tell() {
    listeners.forEach(Runnable::run);
  }
}

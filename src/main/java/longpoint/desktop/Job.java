package longpoint.desktop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.editor.Document;
import longpoint.editor.ToolRunner;
import longpoint.editor.tools.Tools;
import longpoint.field.built.BuiltWalls;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.sheets.BuiltMarks;
import longpoint.sheets.FrameLines;
import longpoint.sheets.PlanView;
import longpoint.surface.RoofMemory;

/**
 * The work in hand: the document, the file it belongs to, and what the engine last made of it.
 * Every change of the shown plan, a drag's previews included, goes to the engine; its answer
 * arrives on the event thread when it is ready.
 */
public final class Job implements AutoCloseable {
  /** How far a plan is worked out. */
  private enum Depth {
    /** Roof and frame, quick enough to follow the pointer. */
    SKETCH,
    /** Everything. */
    WHOLE
  }

  /**
   * What lettering is laid out for.
   *
   * @param unitsPerMm plan units to a millimetre of it, &gt; 0
   * @param aroundMm how far it may stand from the house, &gt; 0
   */
  public record Lettering(double unitsPerMm, double aroundMm) {}

  /** What the engine is asked: a plan, and what its lettering is laid out for. */
  private record Question(Plan plan, Depth depth, Lettering lettering) {
    boolean sameDesign(Question other) {
      return plan == other.plan && depth == other.depth;
    }
  }

  /** A picture and what had been asked for. */
  private record Answer(Question question, Picture picture) {}

  private final ToolRunner runner;
  private final Engine<Question, Answer> engine;
  private final List<Runnable> pictureListeners = new CopyOnWriteArrayList<>();
  private Question asked;
  private Optional<Question> answered = Optional.empty();
  private Lettering lettering = new Lettering(1, 30);
  private Picture picture;
  private Optional<Path> file = Optional.empty();
  private List<Problem> notes = List.of();
  private Optional<Throwable> failure = Optional.empty();
  private Optional<Question> calledOff = Optional.empty();
  private volatile Optional<Pipeline.Stage> stage = Optional.empty();

  Job(Plan plan) {
    runner = new ToolRunner(new Document(plan), Tools.SELECT);
    engine =
        new Engine<>(new Work(this::began)::answer, this::arrived, this::failed, this::calledOff);
    picture = Picture.of(Design.blank(plan), new Drawing("", List.of()), 1);
    runner.onChange(this::ask);
    ask();
  }

  /** The engine's side. A new zoom lays the lettering out anew but keeps the roof. */
  private static final class Work {
    private final RoofMemory memory = new RoofMemory();
    private final Consumer<Pipeline.Stage> told;
    private Question solved;
    private Design last;

    /**
     * @param told each stage as it begins
     */
    Work(Consumer<Pipeline.Stage> told) {
      this.told = told;
    }

    Answer answer(Question question) {
      if (solved == null || !solved.sameDesign(question)) {
        last =
            switch (question.depth()) {
              case SKETCH -> Pipeline.sketch(question.plan(), memory);
              case WHOLE -> Pipeline.solve(question.plan(), memory, told);
            };
        solved = question;
      }
      PlanView view =
          PlanView.onScreen(
              last.plan().spoken(Texts.language()),
              last.surface(),
              question.lettering().unitsPerMm(),
              question.lettering().aroundMm());
      List<Mark> marks = new ArrayList<>(view.tints());
      marks.addAll(FrameLines.of(last.framing()));
      marks.addAll(view.walls());
      marks.addAll(view.roof());
      marks.addAll(built(question.lettering().unitsPerMm()));
      marks.addAll(view.dimensions());
      marks.addAll(view.labels());
      marks.addAll(view.markup());
      return new Answer(
          question,
          Picture.of(last, new Drawing(view.title(), marks), question.lettering().unitsPerMm()));
    }

    /** Walls as built over the walls as drawn, offsets large enough to be seen. */
    private List<Mark> built(double unitsPerMm) {
      BuiltWalls walls = last.onSite().walls().walls();
      return walls.tapes().isEmpty() ? List.of() : BuiltMarks.on(last.plan(), walls, unitsPerMm);
    }
  }

  /** On the engine's thread. */
  private void began(Pipeline.Stage now) {
    stage = Optional.of(now);
  }

  /** A changed plan is sketched first, so that its roof is seen while the rest is worked out. */
  private void ask() {
    Plan shown = runner.shown();
    if (asked == null || shown != asked.plan()) {
      ask(new Question(shown, Depth.SKETCH, lettering));
    } else if (!lettering.equals(asked.lettering())) {
      ask(new Question(shown, isCalledOff() ? Depth.SKETCH : asked.depth(), lettering));
    } else {
      goOn();
    }
  }

  private void ask(Question question) {
    if (asked == null || question.plan() != asked.plan()) {
      calledOff = Optional.empty();
    }
    if (asked == null || !question.sameDesign(asked)) {
      stage = Optional.empty();
    }
    asked = question;
    engine.ask(question);
    engine.callOff(inHand -> outdatedBy(inHand, question));
  }

  /**
   * Whether something is not worth finishing any more. In the middle of a gesture a sketch is: a
   * roof a step behind the pointer beats one that never comes.
   */
  private boolean outdatedBy(Question inHand, Question newer) {
    return !inHand.sameDesign(newer) && (inHand.depth() == Depth.WHOLE || !runner.previewing());
  }

  /** Gives up working the plan out, until it is changed again. */
  public void callOff() {
    engine.callOff();
    calledOff(asked);
  }

  /** Takes up again what was called off. */
  public void goOnAgain() {
    calledOff = Optional.empty();
    ask(new Question(runner.shown(), Depth.SKETCH, lettering));
  }

  private void calledOff(Question question) {
    if (question == asked) {
      calledOff = Optional.of(question);
      pictureListeners.forEach(Runnable::run);
    }
  }

  /** Whether the user has called off working out the plan as it stands. */
  public boolean isCalledOff() {
    return calledOff.isPresent();
  }

  /** How far the engine is with the whole of the plan; empty while it only sketches. */
  public Optional<Pipeline.Stage> stage() {
    return stage;
  }

  /** From the sketch to the whole, unless a gesture is about to change the plan again. */
  private void goOn() {
    if (isSketch()
        && !isCalledOff()
        && answered.filter(asked::sameDesign).isPresent()
        && !runner.previewing()) {
      ask(new Question(asked.plan(), Depth.WHOLE, lettering));
    }
  }

  /** Lays lettering out for a zoom and a size of the sheet. */
  public void letterFor(Lettering lettering) {
    this.lettering = lettering;
    ask();
  }

  private void arrived(Answer answer) {
    failure = Optional.empty();
    answered = Optional.of(answer.question());
    picture = answer.picture();
    pictureListeners.forEach(Runnable::run);
    goOn();
  }

  private void failed(Throwable broken) {
    failure = Optional.of(broken);
    pictureListeners.forEach(Runnable::run);
  }

  public ToolRunner runner() {
    return runner;
  }

  public Document document() {
    return runner.document();
  }

  /** The newest answer of the engine; it may be some moments behind the plan. */
  public Picture picture() {
    return picture;
  }

  /** Whether the picture shows all there is to know of the plan as it stands now. */
  public boolean isUpToDate() {
    boolean deepEnough = runner.previewing() || !isSketch();
    return failure.isPresent()
        || isCalledOff()
        || deepEnough && answered.filter(asked::sameDesign).isPresent();
  }

  /** Whether the picture holds roof and frame alone, with the rest still to come. */
  public boolean isSketch() {
    return answered.filter(q -> q.depth() == Depth.SKETCH).isPresent();
  }

  /** What broke the engine on the newest plan; a bug, but no reason to lose the plan. */
  public Optional<Throwable> failure() {
    return failure;
  }

  /** Called on the event thread whenever a new picture has come. */
  public void onPicture(Runnable listener) {
    pictureListeners.add(listener);
  }

  public Optional<Path> file() {
    return file;
  }

  /** What was odd about the file this plan was opened from. */
  public List<Problem> notes() {
    return notes;
  }

  /** The plan's title, or the words for a plan without one. */
  public String title() {
    String title = document().plan().title();
    return title.isBlank() ? Texts.of("app.untitled") : title;
  }

  /** Starts over with another plan, which counts as saved. */
  public void open(Plan plan, Optional<Path> from, List<Problem> notes) {
    file = from;
    this.notes = List.copyOf(notes);
    runner.open(plan);
  }

  /** Starts over with a plan rescued after a crash, which counts as not saved. */
  public void recover(Plan plan, Optional<Path> belongsTo) {
    file = belongsTo;
    notes = List.of();
    runner.recover(plan);
  }

  /** The plan as it was is in a file now, which is its own from here on. */
  public void saved(Plan plan, Path path) {
    file = Optional.of(path);
    runner.saved(plan);
  }

  @Override
  public void close() {
    engine.close();
  }
}

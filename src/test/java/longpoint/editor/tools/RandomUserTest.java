package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import longpoint.editor.Event;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.Modifier;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.ToolRunner;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever anyone does with any tool: nothing throws, the document changes by commits alone, undo
 * leads back to the very plan it started from, and Escape always leads out without a trace.
 */
@Execution(ExecutionMode.CONCURRENT)
class RandomUserTest {
  private static final int USERS = 20;
  private static final int ACTIONS = 70;
  private static final List<String> TEXTS =
      List.of("24'3-1/2\"", "12' x 10'", "90", "45", "120", "nonsense", "0", "-3", "6' < 30", "x");

  @ParameterizedTest
  @EnumSource(Tools.class)
  void nothingThrowsAndOnlyCommitsChangeTheDocument(Tools tool) {
    int commits = 0;
    for (int seed = 0; seed < USERS; seed++) {
      Random random = new Random(seed * 31L + tool.ordinal());
      Plan first = start(random);
      ToolRunner runner = new Hand(first, tool).runner();
      List<String> did = new ArrayList<>();
      try {
        for (int i = 0; i < ACTIONS; i++) {
          runner.choose(
              runner.tool() == Tools.SELECT && random.nextInt(4) == 0 ? tool : runner.tool());
          Point aim = aim(runner.shown(), random);
          int burst = 1 + random.nextInt(4);
          for (int k = 0; k < burst; k++) {
            act(runner, aim, random, did);
          }
          if (random.nextInt(12) == 0) {
            clickRoundABox(runner, random, did);
          }
          if (random.nextInt(30) == 0) {
            escapeLeavesNoTrace(runner, tool);
          }
        }
        commits += runner.document().done().size();
        undoLeadsBack(runner, first);
      } catch (RuntimeException | AssertionError e) {
        throw new AssertionError("user " + seed + " of " + tool + " did " + did, e);
      }
    }
    // The walk means something only if it gets somewhere.
    assertThat(commits).isGreaterThan(tool == Tools.MEASURE ? -1 : 10);
  }

  private static Plan start(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> Houses.empty();
      case 1 -> Houses.house();
      case 2 -> Houses.courtyard();
      default -> Houses.winged();
    };
  }

  /** Somewhere near a corner or wall more often than not. */
  private static Point aim(Plan plan, Random random) {
    Point any = new Point(random.nextInt(900) - 200, random.nextInt(800) - 300);
    if (plan.parts().isEmpty() || random.nextInt(3) == 0) {
      return any;
    }
    Part part = plan.parts().get(random.nextInt(plan.parts().size()));
    int side = random.nextInt(part.sideCount());
    double share = random.nextBoolean() ? 0 : random.nextDouble();
    Point on = part.side(side).from().toward(part.side(side).to(), share);
    return on.plus(new Point(random.nextInt(7) - 3, random.nextInt(7) - 3));
  }

  private static void act(ToolRunner runner, Point aim, Random random, List<String> did) {
    Pointer pointer = new Pointer(aim, Hand.REACH, held(random));
    int choice = random.nextInt(40);
    if (choice < 3) {
      String text = TEXTS.get(random.nextInt(TEXTS.size()));
      did.add("type " + text);
      runner.type(text);
      send(runner, new Event.Pressing(Event.Key.ENTER));
      return;
    }
    Event event =
        choice < 11
            ? new Event.Moved(pointer)
            : choice < 23
                ? new Event.Pressed(pointer)
                : choice < 29
                    ? new Event.Dragged(pointer)
                    : choice < 36
                        ? new Event.Released(pointer)
                        : choice < 37
                            ? new Event.DoubleClicked(pointer)
                            : new Event.Pressing(key(random));
    did.add(event.toString());
    send(runner, event);
  }

  /** What a user in earnest does now and then: four clicks round a box, and Enter. */
  private static void clickRoundABox(ToolRunner runner, Random random, List<String> did) {
    double x = random.nextInt(900) - 200;
    double y = random.nextInt(800) - 300;
    double w = 20 + random.nextInt(100);
    double h = 20 + random.nextInt(100);
    for (Point p : Ring.of(x, y, x + w, y, x + w, y + h, x, y + h).points()) {
      Pointer pointer = new Pointer(p, Hand.REACH, Set.of());
      did.add("click " + p);
      send(runner, new Event.Moved(pointer));
      send(runner, new Event.Pressed(pointer));
      send(runner, new Event.Released(pointer));
    }
    send(runner, new Event.Pressing(Event.Key.ENTER));
  }

  private static Event.Key key(Random random) {
    Event.Key[] keys = Event.Key.values();
    return keys[random.nextInt(keys.length)];
  }

  private static Set<Modifier> held(Random random) {
    Set<Modifier> held = EnumSet.noneOf(Modifier.class);
    for (Modifier modifier : Modifier.values()) {
      if (random.nextInt(6) == 0) {
        held.add(modifier);
      }
    }
    return held;
  }

  private static void send(ToolRunner runner, Event event) {
    Plan before = runner.document().plan();
    int done = runner.document().done().size();
    runner.handle(event);
    Plan after = runner.document().plan();
    int commits = runner.document().done().size() - done;
    boolean nudged = event instanceof Event.Pressing && after != before && commits == 0;
    assertThat(commits).isEqualTo(after == before || nudged ? 0 : 1);
    assertThat(runner.shown() == after).isEqualTo(!runner.previewing());
    assertThat(runner.status()).isNotBlank();
    assertThat(runner.document().selection().within(after))
        .isEqualTo(runner.document().selection());
    Overlay overlay = runner.overlay();
    assertThat(overlay.dimensions()).allSatisfy(d -> assertThat(d.text()).isNotBlank());
    for (Part part : after.parts()) {
      assertThat(part.outline().counterClockwise()).isTrue();
      assertThat(part.holes()).noneMatch(h -> h.counterClockwise());
    }
    assertThat(after.parts().stream().map(Part::id)).doesNotHaveDuplicates();
    assertThat(after.joins())
        .allMatch(j -> after.part(j.upper()).isPresent() && after.part(j.lower()).isPresent());
  }

  private static void escapeLeavesNoTrace(ToolRunner runner, Tools tool) {
    Plan before = runner.document().plan();
    Optional<ToolState> state = Optional.of(runner.state());
    int steps = 0;
    while (runner.tool() != Tools.SELECT || runner.previewing() || state.isPresent()) {
      runner.handle(new Event.Pressing(Event.Key.ESCAPE));
      assertThat(++steps).isLessThan(200);
      state = runner.state().back();
    }
    runner.handle(new Event.Pressing(Event.Key.ESCAPE));
    assertThat(runner.document().plan()).isSameAs(before);
    assertThat(runner.shown()).isSameAs(before);
    assertThat(runner.entry()).isEmpty();
    assertThat(runner.document().selection().isEmpty()).isTrue();
    runner.choose(tool);
  }

  private static void undoLeadsBack(ToolRunner runner, Plan first) {
    while (runner.engaged()) {
      runner.undo();
    }
    Plan last = runner.document().plan();
    int steps = runner.document().done().size();
    for (int i = 0; i < steps; i++) {
      runner.undo();
    }
    assertThat(runner.document().plan()).isSameAs(first);
    assertThat(runner.document().isDirty()).isFalse();
    for (int i = 0; i < steps; i++) {
      runner.redo();
    }
    assertThat(runner.document().plan()).isSameAs(last);
  }
}

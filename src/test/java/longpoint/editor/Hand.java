package longpoint.editor;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.StringJoiner;
import longpoint.editor.tools.Tools;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * A user for tests. It works from a script with one action per {@code ;}:
 *
 * <ul>
 *   <li>{@code move x y}, {@code press x y}, {@code drag x y}, {@code release x y}, {@code double x
 *       y}; {@code click x y} moves, presses and releases; {@code shift}, {@code alt} and {@code
 *       control} may follow
 *   <li>{@code type TEXT}: characters one by one; {@code enter}, {@code escape}, {@code backspace},
 *       {@code delete}, {@code left}, {@code right}, {@code up}, {@code down}, {@code tab}, {@code
 *       next}, {@code previous}; what is held may follow
 * </ul>
 */
public final class Hand {
  /** How near counts as on, in plan units. */
  public static final double REACH = 4;

  private final ToolRunner runner;

  public Hand(Plan plan, Tool tool) {
    runner = new ToolRunner(new Document(plan), Tools.SELECT);
    runner.choose(tool);
  }

  public ToolRunner runner() {
    return runner;
  }

  public Plan plan() {
    return runner.document().plan();
  }

  /** Does what a script says. */
  public Hand does(String script) {
    for (String action : script.split(";")) {
      if (!action.isBlank()) {
        act(action.strip());
      }
    }
    return this;
  }

  private void act(String action) {
    if (action.startsWith("type ")) {
      action.substring(5).codePoints().forEach(c -> runner.type(Character.toString(c)));
      return;
    }
    String[] words = action.split(" +");
    switch (words[0]) {
      case "move" -> runner.handle(new Event.Moved(pointer(words)));
      case "press" -> runner.handle(new Event.Pressed(pointer(words)));
      case "drag" -> runner.handle(new Event.Dragged(pointer(words)));
      case "release" -> runner.handle(new Event.Released(pointer(words)));
      case "double" -> runner.handle(new Event.DoubleClicked(pointer(words)));
      case "click" -> {
        runner.handle(new Event.Moved(pointer(words)));
        runner.handle(new Event.Pressed(pointer(words)));
        runner.handle(new Event.Released(pointer(words)));
      }
      default ->
          runner.handle(
              new Event.Pressing(
                  Event.Key.valueOf(words[0].toUpperCase(Locale.ROOT)), held(words, 1)));
    }
  }

  private static Pointer pointer(String[] words) {
    Point at = new Point(Double.parseDouble(words[1]), Double.parseDouble(words[2]));
    return new Pointer(at, REACH, held(words, 3));
  }

  private static Set<Modifier> held(String[] words, int first) {
    Set<Modifier> held = EnumSet.noneOf(Modifier.class);
    for (int i = first; i < words.length; i++) {
      held.add(Modifier.valueOf(words[i].toUpperCase(Locale.ROOT)));
    }
    return held;
  }

  /**
   * Parts with their corners and the first letters of their edges, e.g. {@code main 0,0 … EGEG}.
   */
  public static List<String> print(Plan plan) {
    List<String> parts = new ArrayList<>();
    for (Part part : plan.parts()) {
      StringJoiner text = new StringJoiner(" ");
      text.add(part.id());
      part.rings()
          .forEach(
              ring -> {
                ring.points().forEach(p -> text.add(number(p.x()) + "," + number(p.y())));
                text.add("|");
              });
      StringBuilder kinds = new StringBuilder();
      part.edges().forEach(e -> kinds.append(e.kind().name().charAt(0)));
      parts.add(text.add(kinds).toString());
    }
    return parts;
  }

  /** A figure to the last bit, whole ones without a point. */
  private static String number(double d) {
    return d == Math.rint(d) ? Long.toString((long) d) : Double.toString(d);
  }
}

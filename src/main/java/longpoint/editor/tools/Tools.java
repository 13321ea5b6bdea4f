package longpoint.editor.tools;

import java.util.Locale;
import java.util.function.Supplier;
import longpoint.editor.Messages;
import longpoint.editor.Tool;
import longpoint.editor.ToolState;

/** Every tool there is, in the order of the tool bar. */
public enum Tools implements Tool {
  SELECT(Selecting::new),
  OUTLINE(OutlineStart::new),
  RECTANGLE(() -> new FirstCorner(BoxUse.PART)),
  ADDITION(AdditionStart::new),
  COURTYARD(() -> new FirstCorner(BoxUse.COURTYARD)),
  CORNER(AddingCorner::new),
  EDGE(SettingEdges::new),
  MOVE(() -> new GestureStart(PartGesture.MOVE)),
  COPY(() -> new GestureStart(PartGesture.COPY)),
  TURN(() -> new GestureStart(PartGesture.TURN)),
  MIRROR(() -> new GestureStart(PartGesture.MIRROR)),
  MEASURE(Measuring::new);

  private final Supplier<ToolState> start;

  Tools(Supplier<ToolState> start) {
    this.start = start;
  }

  @Override
  public ToolState start() {
    return start.get();
  }

  @Override
  public String label() {
    return Messages.text(key() + ".label");
  }

  @Override
  public String hint() {
    return Messages.text(key() + ".hint");
  }

  private String key() {
    return "tool." + name().toLowerCase(Locale.ROOT);
  }
}

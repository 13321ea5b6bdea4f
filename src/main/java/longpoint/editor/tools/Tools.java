package longpoint.editor.tools;

import java.util.Locale;
import java.util.function.Supplier;
import longpoint.editor.Messages;
import longpoint.editor.Tool;
import longpoint.editor.ToolState;

/** Every tool there is, in the order of the tool bar. */
public enum Tools implements Tool {
  SELECT(Selecting::new),
  OUTLINE(() -> new FirstPoint(OutlineDrawing.BEGINNING)),
  RECTANGLE(() -> new FirstPoint(BoxUse.PART)),
  ADDITION(AdditionStart::new),
  COURTYARD(() -> new FirstPoint(BoxUse.COURTYARD)),
  CORNER(AddingCorner::new),
  EDGE(SettingEdges::new),
  MOVE(() -> new FirstPoint(PartGesture.MOVE)),
  COPY(() -> new FirstPoint(PartGesture.COPY)),
  TURN(() -> new FirstPoint(PartGesture.TURN)),
  MIRROR(() -> new FirstPoint(PartGesture.MIRROR)),
  MEASURE(Measuring::new),
  DIMENSION(() -> new FirstPoint(DimensionSpan.BEGINNING)),
  NOTE(() -> new FirstPoint(NoteLeader.BEGINNING));

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

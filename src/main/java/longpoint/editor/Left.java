package longpoint.editor;

import java.util.Optional;

/** A gesture that took some drawing, left for another tool; undo takes it up again. */
record Left(Tool tool, ToolState state) {
  static Optional<Left> of(Tool tool, ToolState state) {
    return state.keeps() ? Optional.of(new Left(tool, state)) : Optional.empty();
  }
}

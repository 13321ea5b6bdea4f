package longpoint.drawing;

/** An output, or picking. No default methods: a new mark does not compile until all handle it. */
public interface MarkVisitor {
  void path(Mark.Path path);

  void arc(Mark.Arc arc);

  void text(Mark.Text text);

  void dimension(Mark.Dimension dimension);

  void fill(Mark.Fill fill);

  void group(Mark.Group group);
}

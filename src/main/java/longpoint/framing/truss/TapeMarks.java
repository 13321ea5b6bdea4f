package longpoint.framing.truss;

import java.util.List;

/**
 * Running tape marks for the two plates of a run, the same on both, hooked on the start wall's
 * outside face. The truss stands on the far side of its mark.
 *
 * @param part id of the part
 * @param run id of the run
 * @param length of the plate from end wall to end wall
 * @param thickness of one ply
 * @param marks near face of each truss, rising
 * @param gaps clear distance from each truss to the next
 * @param widths of each truss, all its plies together
 */
public record TapeMarks(
    String part,
    String run,
    double length,
    double thickness,
    List<Double> marks,
    List<Double> gaps,
    List<Double> widths) {
  public TapeMarks {
    marks = List.copyOf(marks);
    gaps = List.copyOf(gaps);
    widths = List.copyOf(widths);
  }

  public static TapeMarks of(RunLayout layout) {
    return new TapeMarks(
        layout.run().part().id(),
        layout.run().id(),
        layout.run().length(),
        layout.run().part().frame().thickness(),
        layout.row().tapeMarks(),
        layout.row().gaps(),
        layout.row().widths());
  }
}

package longpoint.framing.gable;

import java.util.List;
import java.util.Objects;
import longpoint.wording.Phrase;

/**
 * The ladder along one rake.
 *
 * @param part id of the part
 * @param run id of the run
 * @param side id of the gable wall
 * @param rake which rake, seen from outside
 * @param rakeLength plumb cut of the tail to plumb cut at the ridge, along the slope; the fly
 *     rafter's length
 * @param plumbCut of the fly rafter at both ends, degrees from its edge
 * @param lookouts lower edge of each, up the slope from the tail's plumb cut
 * @param lookoutLength inner truss's face to inside of the fly rafter
 * @param lookoutWidth of each up the slope
 * @param drop plumb, by which the gable truss's top chord is lowered
 * @param blocks clear lengths between lookouts, first from the tail, last to the ridge
 * @param blockBevel of each block's lower end, degrees: leaves a path for air
 * @param backSpan how far a lookout reaches in from the wall face
 * @param overhang wall face to the outside of the rake
 * @param review what should be looked at before building; empty when nothing
 */
public record Ladder(
    String part,
    String run,
    String side,
    Rake rake,
    double rakeLength,
    double plumbCut,
    List<Double> lookouts,
    double lookoutLength,
    double lookoutWidth,
    double drop,
    List<Double> blocks,
    double blockBevel,
    double backSpan,
    double overhang,
    List<Phrase> review) {
  /** Which slope of a gable, seen standing outside and facing the wall. */
  public enum Rake {
    LEFT,
    RIGHT
  }

  public Ladder {
    Objects.requireNonNull(rake);
    lookouts = List.copyOf(lookouts);
    blocks = List.copyOf(blocks);
    review = List.copyOf(review);
  }
}

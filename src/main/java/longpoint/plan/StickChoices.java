package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.units.LengthUnit;

/**
 * What the user decides about rafters. Lengths in plan units.
 *
 * @param plateWidth of the walls the rafters sit on, &gt; 0; empty for a 2x4 wall
 * @param post width of a post under each point where hips meet without a ridge, &gt; 0; empty for
 *     none
 * @param ridgeEnds what stands at the end of a ridge between hips; empty for hips
 */
public record StickChoices(
    Optional<Double> plateWidth, Optional<Double> post, Optional<RidgeEnds> ridgeEnds) {
  public static final StickChoices NONE =
      new StickChoices(Optional.empty(), Optional.empty(), Optional.empty());

  /** What the end of a ridge between hips is held by. */
  public enum RidgeEnds {
    /** Hips lie against the sides of the ridge. */
    HIPS,
    /** A common on each side and one out front, and the hips in the corners between them. */
    COMMONS;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public StickChoices {
    Objects.requireNonNull(plateWidth);
    Objects.requireNonNull(post);
    Objects.requireNonNull(ridgeEnds);
  }

  /** Width of the plate, 3 1/2 in or 89 mm where nothing is said. */
  public double plateWidth(LengthUnit unit) {
    double usual = unit == LengthUnit.INCH ? 3.5 : 89;
    return plateWidth.filter(w -> w > 0 && Double.isFinite(w)).orElse(usual);
  }

  /** A post that can be meant. */
  public Optional<Double> soundPost() {
    return post.filter(w -> w > 0 && Double.isFinite(w));
  }

  public boolean hasCommonsAtRidgeEnds() {
    return ridgeEnds.equals(Optional.of(RidgeEnds.COMMONS));
  }

  public StickChoices withPlateWidth(Optional<Double> width) {
    return new StickChoices(width, post, ridgeEnds);
  }

  public StickChoices withPost(Optional<Double> post) {
    return new StickChoices(plateWidth, post, ridgeEnds);
  }

  public StickChoices withRidgeEnds(RidgeEnds ends) {
    return new StickChoices(plateWidth, post, Optional.of(ends));
  }
}

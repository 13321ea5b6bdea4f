package longpoint.desktop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;

/** The sample plans, which come with the program, simplest first. */
public final class Samples {
  /** Names of their files without the ending. */
  public static final List<String> NAMES =
      List.of(
          "tolverby-cabin",
          "marrowgate-bungalow",
          "sable-lane-garden-wing",
          "quennel-court",
          "fernholt-garage",
          "heronsmere-lodge");

  private Samples() {}

  /** What a sample shows, in a few words. */
  public static String words(String name) {
    return Texts.of("sample." + name);
  }

  /**
   * Reads a sample.
   *
   * @throws IllegalStateException if the program has come without it, which is a bug
   */
  public static Opened read(String name) {
    try (InputStream in =
        Samples.class.getResourceAsStream("/longpoint/samples/" + name + ".json")) {
      if (in == null) {
        throw new IllegalStateException("the sample is missing from the program: " + name);
      }
      return PlanFile.read(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

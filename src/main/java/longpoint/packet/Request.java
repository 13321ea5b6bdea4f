package longpoint.packet;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import longpoint.sheets.Paper;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;

/**
 * What a packet shall hold.
 *
 * @param outputs kinds of file, at least one
 * @param bundles files made of the others, may be none
 * @param language of everything that is read; empty for the plan's own. The plan itself goes along
 *     as it is.
 */
public record Request(
    Paper paper, Set<Output> outputs, Set<Bundle> bundles, Optional<Language> language) {
  /** A file that holds others. */
  public enum Bundle {
    /** All of them, in one archive. */
    ZIP,
    /** A mail ready to be addressed, with the files somebody reads attached. */
    MAIL
  }

  /** What a mail takes along when everything is written: not each sheet by itself. */
  private static final Set<Output> MAILED =
      EnumSet.of(Output.PDF, Output.HTML, Output.XLSX, Output.DIFFERENCES, Output.DXF, Output.PLAN);

  public Request {
    Objects.requireNonNull(paper);
    if (outputs.isEmpty()) {
      throw new IllegalArgumentException("a packet needs a file");
    }
    outputs = Collections.unmodifiableSet(EnumSet.copyOf(outputs));
    bundles = Set.copyOf(bundles);
    Objects.requireNonNull(language);
  }

  /** In the plan's own language. */
  public Request(Paper paper, Set<Output> outputs, Set<Bundle> bundles) {
    this(paper, outputs, bundles, Optional.empty());
  }

  /** Everything, on the paper most printers of the unit hold. */
  public static Request everything(LengthUnit unit) {
    return new Request(Packet.paperFor(unit), EnumSet.allOf(Output.class), Set.of());
  }

  public Request withPaper(Paper paper) {
    return new Request(paper, outputs, bundles, language);
  }

  public Request withOutputs(Set<Output> outputs) {
    return new Request(paper, outputs, bundles, language);
  }

  public Request withBundles(Set<Bundle> bundles) {
    return new Request(paper, outputs, bundles, language);
  }

  public Request withLanguage(Optional<Language> language) {
    return new Request(paper, outputs, bundles, language);
  }

  /** The kinds that go along with a mail: those chosen, or of everything those somebody reads. */
  Set<Output> mailed() {
    return outputs.size() == Output.values().length ? MAILED : outputs;
  }
}

package longpoint.framing.run;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point;

/**
 * How an outline with several legs is split, for the user to accept, turn round or turn down.
 *
 * @param part id of the part
 * @param main id of the run whose ridge goes through; empty when the outline is framed whole
 * @param wings ids of the runs that come in against it
 * @param reason why that one goes through
 * @param at plan point in the leg that goes through and in no other
 * @param others a plan point in each leg that could go through instead
 */
public record RunProposal(
    String part, String main, List<String> wings, Reason reason, Point at, List<Point> others) {
  /** Why a leg goes through. */
  public enum Reason {
    /** Proposed: its ridge is the tallest. */
    TALLEST,
    /** Proposed: it is the longer of equal ridges. */
    LONGER,
    /** The user has said so. */
    CHOSEN,
    /** None does: the user has turned the split down. */
    DECLINED
  }

  public RunProposal {
    Objects.requireNonNull(reason);
    Objects.requireNonNull(at);
    wings = List.copyOf(wings);
    others = List.copyOf(others);
  }
}

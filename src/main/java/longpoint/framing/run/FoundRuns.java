package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * The runs of a plan and where they meet.
 *
 * @param runs in the order of parts, main run first
 * @param meetings in the order found
 * @param proposals one for each part that was split
 */
public record FoundRuns(
    List<Run> runs, List<Meeting> meetings, List<RunProposal> proposals, List<Problem> problems) {
  static final FoundRuns NONE = new FoundRuns(List.of(), List.of(), List.of(), List.of());

  public FoundRuns {
    runs = List.copyOf(runs);
    meetings = List.copyOf(meetings);
    proposals = List.copyOf(proposals);
    problems = List.copyOf(problems);
  }

  static FoundRuns failed(String where, Phrase why) {
    return new FoundRuns(List.of(), List.of(), List.of(), List.of(Problem.warning(where, why)));
  }

  FoundRuns and(FoundRuns more) {
    return new FoundRuns(
        joined(runs, more.runs),
        joined(meetings, more.meetings),
        joined(proposals, more.proposals),
        joined(problems, more.problems));
  }

  private static <T> List<T> joined(List<T> a, List<T> b) {
    List<T> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }
}

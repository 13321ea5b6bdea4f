package longpoint.framing.run;

import java.util.List;

/**
 * How the program would split one outline with several legs, for the user to accept or change.
 *
 * @param part id of the part
 * @param main id of the run whose ridge goes through
 * @param wings ids of the runs that come in against it
 * @param reason why that one goes through, in words
 */
public record RunProposal(String part, String main, List<String> wings, String reason) {
  public RunProposal {
    wings = List.copyOf(wings);
  }
}

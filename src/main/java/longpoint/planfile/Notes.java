package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Problem;

/** What was odd about a file that could be opened all the same. */
final class Notes {
  /** More would bury the ones that matter. */
  private static final int MOST = 50;

  private final List<Problem> notes = new ArrayList<>();
  private int unsaid;

  void unknownKey(String where, JsonValue value) {
    add(where, value.path().words() + ": this key is not known here. It is kept, and not used.");
  }

  void add(String where, String message) {
    if (notes.size() < MOST) {
      notes.add(Problem.note(where, message));
    } else {
      unsaid++;
    }
  }

  List<Problem> all() {
    List<Problem> all = new ArrayList<>(notes);
    if (unsaid > 0) {
      all.add(Problem.note("plan", "And " + unsaid + " more notes like these."));
    }
    return all;
  }
}

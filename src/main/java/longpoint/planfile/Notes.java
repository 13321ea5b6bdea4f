package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** What was odd about a file that could be opened all the same. */
final class Notes {
  /** More would bury the ones that matter. */
  private static final int MOST = 50;

  private final List<Problem> notes = new ArrayList<>();
  private int unsaid;

  void unknownKey(String where, JsonValue value) {
    add(where, Phrase.of("planfile.unknownKey", value.path().words()));
  }

  /** In English only. */
  void add(String where, String message) {
    note(Problem.note(where, message));
  }

  void add(String where, Phrase message) {
    note(new Problem(Problem.Level.NOTE, where, new AsItIs(message), Worded.none()));
  }

  private void note(Problem problem) {
    if (notes.size() < MOST) {
      notes.add(problem);
    } else {
      unsaid++;
    }
  }

  List<Problem> all() {
    List<Problem> all = new ArrayList<>(notes);
    if (unsaid > 0) {
      all.add(Problem.note("plan", Phrase.of("planfile.andMore", unsaid)));
    }
    return all;
  }
}

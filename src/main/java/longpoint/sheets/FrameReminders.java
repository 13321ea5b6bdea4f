package longpoint.sheets;

import java.util.List;

/** What can hurt the crew at each kind of work; common practice, and no more than a reminder. */
final class FrameReminders {
  private static final String RESTRAINT =
      "A truss falls over until it is held: brace each one as it is set, before the crane lets go,"
          + " as the supplier's handling and bracing documents say.";

  private static final String SUPPLIER =
      "The supplier's drawings rule on webs, plates, girders, hangers, nails and bearings. Never"
          + " cut or alter a truss without the supplier's word in writing.";

  private static final String HEIGHT =
      "Work at height: guard edges and openings or tie off; no loads on the frame until it is"
          + " braced; stand clear of what is being lifted.";

  private static final String LADDER =
      "Lookouts carry whoever stands on the rake: overhangs and fixings need the eye of whoever"
          + " designs the frame.";

  private static final String RAFTER =
      "Sizes, ties and connections of rafters are not worked out here: the local code's tables or a"
          + " licensed designer rule. Cut one of each mark and try it before cutting the rest.";

  private static final String VALLEY =
      "The roof beneath carries the set: its trusses must be made and braced for it, and sheathed"
          + " first unless the supplier says otherwise.";

  private static final String CHALK =
      "Check the corner for square and two lines by tape before cutting. Measures lie on the deck,"
          + " up the slope.";

  private FrameReminders() {}

  static List<String> layout() {
    return List.of(RESTRAINT, SUPPLIER, HEIGHT);
  }

  static List<String> trusses() {
    return List.of(SUPPLIER, RESTRAINT);
  }

  static List<String> valley() {
    return List.of(VALLEY, SUPPLIER, HEIGHT);
  }

  static List<String> ladders() {
    return List.of(LADDER, HEIGHT);
  }

  static List<String> rafters() {
    return List.of(RAFTER, HEIGHT);
  }

  static List<String> deck() {
    return List.of(CHALK, HEIGHT);
  }
}

package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.FramingSet;

/** What can hurt the crew at each kind of work; common practice, and no more than a reminder. */
final class FrameReminders {
  private static final String RESTRAINT = "reminder.restraint";
  private static final String SUPPLIER = "reminder.supplier";
  private static final String HEIGHT = "reminder.height";
  private static final String LADDER = "reminder.ladder";
  private static final String RAFTER = "reminder.rafter";
  private static final String PAIRING = "reminder.pairing";
  private static final String VALLEY = "reminder.valley";
  private static final String CHALK = "reminder.chalk";

  private FrameReminders() {}

  /** On a layout: of trusses, or where there are none, of rafters. */
  static List<String> layout(Words words, FramingSet framing) {
    return framing.trusses().isEmpty() && !framing.rafters().isEmpty()
        ? said(words, PAIRING, RAFTER, HEIGHT)
        : said(words, RESTRAINT, SUPPLIER, HEIGHT);
  }

  static List<String> trusses(Words words) {
    return said(words, SUPPLIER, RESTRAINT);
  }

  /** Where trusses hang on girders. */
  static List<String> girders(Words words) {
    List<String> said = new ArrayList<>(trusses(words));
    said.add(words.from("framing").text("girder.hung"));
    return said;
  }

  static List<String> valley(Words words) {
    return said(words, VALLEY, SUPPLIER, HEIGHT);
  }

  static List<String> ladders(Words words) {
    return said(words, LADDER, HEIGHT);
  }

  static List<String> rafters(Words words) {
    return said(words, RAFTER, HEIGHT);
  }

  static List<String> deck(Words words) {
    return said(words, CHALK, HEIGHT);
  }

  private static List<String> said(Words words, String... keys) {
    return List.of(keys).stream().map(words::text).toList();
  }
}

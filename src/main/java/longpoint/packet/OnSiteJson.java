package longpoint.packet;

import com.fasterxml.jackson.databind.node.ObjectNode;
import longpoint.field.built.AsBuiltCheck;

/** What was measured and delivered, for programs. */
final class OnSiteJson {
  private OnSiteJson() {}

  static ObjectNode walls(AsBuiltCheck check) {
    ObjectNode node = RecordsJson.of(check.walls());
    node.remove("problems");
    ObjectNode more = RecordsJson.of(check);
    node.set("seats", more.get("seats"));
    node.set("changes", more.get("changes"));
    return node;
  }
}

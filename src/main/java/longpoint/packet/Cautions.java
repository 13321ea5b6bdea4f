package longpoint.packet;

import java.util.List;

/** What everybody who builds from a packet must have read. */
final class Cautions {
  /** As in the read-me; work at height comes first where it is read on the roof. */
  static final List<String> ALL =
      List.of(
          "Roof work is work at height. Fall protection, temporary restraint of trusses as they"
              + " are set, and lifting under a qualified rigger come before any figure here.",
          "This is an aid to layout and carpentry, not engineering. It sizes no member and no"
              + " connection.",
          "The truss supplier's drawings and installation documents rule over anything here. Local"
              + " code, the building inspector and licensed practice decide what may be built.",
          "Check the walls as they stand before cutting: a plan is square, a building may not be.");

  private Cautions() {}
}

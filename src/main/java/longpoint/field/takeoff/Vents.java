package longpoint.field.takeoff;

import longpoint.plan.Buying;

/**
 * Net free opening an attic needs for air, by the shares most codes use (IRC R806.2): 1/150 of the
 * vented area, or 1/300 where the code's conditions for that are met. Areas in square plan units.
 *
 * @param attic vented area, on the flat
 * @param share the user goes by
 */
public record Vents(double attic, Buying.Vent share) {
  /** Opening by the share the user goes by. */
  public double needed() {
    return share.of(attic);
  }

  public double oneIn150() {
    return attic / 150;
  }

  public double oneIn300() {
    return attic / 300;
  }
}

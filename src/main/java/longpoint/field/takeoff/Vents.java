package longpoint.field.takeoff;

/**
 * Net free opening an attic needs for air, by the shares most codes use (IRC R806.2): 1/150 of the
 * vented area, or 1/300 where the code's conditions for that are met. Areas in square plan units.
 *
 * @param attic vented area, on the flat
 */
public record Vents(double attic) {
  public double oneIn150() {
    return attic / 150;
  }

  public double oneIn300() {
    return attic / 300;
  }
}

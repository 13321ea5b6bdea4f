package longpoint.field.loads;

/**
 * What does not end on a wall of the plan: ridges, roofs that stand already, open ends.
 *
 * @param on what it comes to
 * @param subject id of the part
 * @param bearings how many ends
 */
public record OtherLoad(
    BearingLoad.On on, String subject, int bearings, double area, Amount reaction, Force force) {}

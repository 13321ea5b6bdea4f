package longpoint.field.lift;

import longpoint.geometry.Point3;

/**
 * A place that a section hangs from.
 *
 * @param number from 1
 * @param at on top of the framing
 * @param over along the trusses from the outside face of the first truss's first bearing
 * @param along from the outer face of the first truss, square to it
 * @param line length from here to the hook, no rigging taken off
 * @param angle of the line from level, degrees
 * @param tension most that the line may have to carry, lb or kg
 * @param share of that upright
 */
public record HangPoint(
    int number,
    Point3 at,
    double over,
    double along,
    double line,
    double angle,
    double tension,
    double share) {}

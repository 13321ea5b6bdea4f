package longpoint.field.loads;

import longpoint.geometry.Point;

/**
 * A girder's bearing: the place for a post in the wall.
 *
 * @param member id of the girder
 * @param mark on the layout
 * @param wall id of the side
 * @param along place on the wall, from its first corner
 * @param at plan point
 * @param carries how many others hang on it
 * @param area ground nearest to it, with what hangs on it
 */
public record PointLoad(
    String member,
    String mark,
    String wall,
    double along,
    Point at,
    int carries,
    double area,
    Amount reaction,
    Force force) {}

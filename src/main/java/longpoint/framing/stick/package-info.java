/**
 * Rafters in their places. Steps: commons and jacks of each run, its hips and ridge, valleys and
 * their jacks where runs meet, rafters built over a finished deck, marks shared by equal rafters.
 */
package longpoint.framing.stick;

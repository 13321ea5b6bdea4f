/**
 * Profiles of trusses and their places along a run. Steps: stations, one section at each, hip ends,
 * pieces too tall to haul, marks shared by equal profiles, tape marks for the plates.
 */
package longpoint.framing.truss;

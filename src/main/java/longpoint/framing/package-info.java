/**
 * From a plan and its roof surface to every stick of the frame. Steps: find the straight runs of
 * each part, lay trusses or rafters along each run, stand valley sets where one run lies over
 * another, cut blocks between, build the ladders of the gable overhangs, measure fascia and rake.
 *
 * <p>Beneath it: {@code square} the figures of the framing square, {@code rafter} the arithmetic of
 * single rafters, {@code truss} profiles and layout, {@code valley} valley sets, {@code gable}
 * ladders and studs. Everything here is layout: aids for the crew, never engineering.
 */
package longpoint.framing;

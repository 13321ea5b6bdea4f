/** The boards along the roof's edges: fascia under the eaves, rake boards up the gables. */
package longpoint.framing.edge;

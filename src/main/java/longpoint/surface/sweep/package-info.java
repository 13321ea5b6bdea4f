/**
 * The weighted straight skeleton: every side of a closed outline sweeps inward at its own speed,
 * and the ground is shared out by which side's sweep arrives where. Knows nothing of roofs.
 */
package longpoint.surface.sweep;

/**
 * What stands beside the plan, one at a time: the house, a truss seen square to its face, a plane
 * laid flat, the sheets as they are exported, and lists. Each shows the newest design, follows what
 * is picked and picks what is clicked; none has geometry of its own.
 */
package longpoint.desktop.view;

/**
 * New, open, save, packet, quit: what happens between the document and the disk, and what is asked
 * on the way. Nothing here loses work: leaving a changed plan always asks, and a plan that could
 * not be written stays open and unsaved.
 */
package longpoint.desktop.file;

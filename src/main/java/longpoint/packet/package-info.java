/**
 * What is handed over: the figures of a design as text and as JSON, and the files of a packet. The
 * window's button and the command line both write it from here.
 */
package longpoint.packet;

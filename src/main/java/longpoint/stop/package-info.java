/** How long work is called off: whoever wants it to end interrupts its thread. */
package longpoint.stop;

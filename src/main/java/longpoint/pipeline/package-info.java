/** One method from plan to design, every stage a line. */
package longpoint.pipeline;

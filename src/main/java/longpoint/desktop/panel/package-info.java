/**
 * What stands around the sheet: the tool strip, the properties of what is selected, the figures of
 * the roof, the problems and the status line. Every panel shows what the job holds and changes it
 * only by handing commands to the runner.
 */
package longpoint.desktop.panel;

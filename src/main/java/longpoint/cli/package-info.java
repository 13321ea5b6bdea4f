/**
 * The command line: parse, run, exit code. 0 is well, 1 a plan with errors, 2 a command or file
 * that cannot be used.
 */
package longpoint.cli;

/** The command line: verbs, exit codes, files written whole or not at all. */
package holloway.cli;

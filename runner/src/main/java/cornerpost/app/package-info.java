/** The command line: the only package that prints, exits, or touches files. */
package cornerpost.app;

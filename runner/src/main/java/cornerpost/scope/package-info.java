/**
 * The owner's choices: the questions each sheet asks, and the answers as validated records. Knows a
 * cell only as a plain label. Imports {@code measure}, {@code trace} and {@code fact}.
 */
package cornerpost.scope;

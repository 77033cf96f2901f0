/**
 * The whole result, and the planner that runs the steps. Imports everything above it; no files, no
 * clock.
 */
package cornerpost.plan;

/**
 * Simulation of cost and finish together. Imports what stands above it in the order measure, trace,
 * fact, scope, takeoff, price, work, schedule.
 */
package cornerpost.risk;

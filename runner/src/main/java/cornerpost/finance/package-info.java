/** Cash flow, draws and cost to complete. Imports what stands above it. */
package cornerpost.finance;

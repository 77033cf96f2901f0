/** Units, exact conversion and money with its one rounding. Imports nothing of ours. */
package cornerpost.measure;

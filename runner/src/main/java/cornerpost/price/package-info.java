/**
 * The price book, quotes and the estimate: quantities to money. Imports {@code measure}, {@code
 * trace}, {@code fact}, {@code scope} and {@code takeoff}.
 */
package cornerpost.price;

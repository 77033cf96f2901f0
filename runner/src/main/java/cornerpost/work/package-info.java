/**
 * Packages of work: quantities and labour to tasks, links and crews. Imports what stands above it:
 * {@code measure}, {@code trace}, {@code fact}, {@code scope}, {@code takeoff}, {@code price}.
 */
package cornerpost.work;

/** Benchmarks, compiled and run only in the Maven profile {@code bench}. */
package holloway.bench;

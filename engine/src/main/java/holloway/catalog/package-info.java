/** Things one buys: cable kinds, and how many fit a hole. */
package holloway.catalog;

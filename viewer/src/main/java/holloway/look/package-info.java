/**
 * How a picture looks, as numbers and marks: colours, bodies, panes, lines, words. Nothing here
 * draws; `gl` draws what stands here and knows nothing else.
 */
package holloway.look;

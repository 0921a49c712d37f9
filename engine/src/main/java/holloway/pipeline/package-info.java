/** The only place that wires the stages together: one method a verb. */
package holloway.pipeline;

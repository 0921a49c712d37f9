/** The answer as records: the JSON contract of {@code plan}, without node ids or graph words. */
package holloway.plan;

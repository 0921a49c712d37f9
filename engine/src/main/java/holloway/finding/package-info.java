/** What a stage has to say besides its result: findings with a severity, a place and a source. */
package holloway.finding;

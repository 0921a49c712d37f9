/**
 * What codes, standards and good practice say of a finished plan: one small class a rule, each with
 * its id, how binding it is, its source and what to do. A duty that follows from a rule of law
 * (seal this hole) is a finding of that severity, but is not broken.
 */
package holloway.check.rules;

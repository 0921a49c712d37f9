/**
 * What a person sees and has changed, as values: what is peeled, cut and chosen, where they walk,
 * which wishes they added, what can be undone. Knows no window and draws nothing.
 */
package holloway.session;

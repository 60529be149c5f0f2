/**
 * Follows drawn jobs from the complaint to a passed retest, as the advisor goes and as the usual
 * practices go, and says what each costs. Knows the faults; nothing that helps a learner may use
 * it.
 */
package faultfinch.judging;

/**
 * A technician's words about a real board, turned into observations, and the job they belong to.
 * Nothing typed is lost: what cannot be weighed is kept with the reason.
 */
package faultfinch.desk;

/**
 * What can be wrong with a board. A fault is an identity with one text form; what it does to a
 * compiled board it says through {@link faultfinch.fault.Harm}, without knowing who carries it out.
 */
package faultfinch.fault;

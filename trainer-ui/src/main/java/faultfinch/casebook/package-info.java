/** The list of cases, and which of them were brought to an end. */
package faultfinch.casebook;

/** The JSON form of a case: read with line and column for every mistake, and written back. */
package faultfinch.format;

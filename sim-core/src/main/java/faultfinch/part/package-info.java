/**
 * One page a part: its drawing, what it does when signals settle, what it stores when a phase ends,
 * and what it leaves out. A part knows its own pins and nothing else.
 */
package faultfinch.part;

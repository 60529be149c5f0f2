/**
 * The program's entry and the window that holds the screens. Everything is wired here, by
 * constructor.
 */
package faultfinch.app;

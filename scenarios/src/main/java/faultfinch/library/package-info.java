/** The cases that come with the program, as files. */
package faultfinch.library;

/**
 * The program's commands, one file each, writing to the writers they are given. Printing to the
 * console and ending the process are left to the program's entry.
 */
package faultfinch.cli;

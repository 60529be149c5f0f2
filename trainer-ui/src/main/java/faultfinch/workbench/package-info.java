/**
 * The bench on the screen: the board drawn to scale, the monitor, the notes and the drawer. It
 * plays an attempt and sees nothing below it.
 */
package faultfinch.workbench;

/**
 * What every screen needs: words from files, skins, and a way to work without stopping the window.
 */
package faultfinch.fx;

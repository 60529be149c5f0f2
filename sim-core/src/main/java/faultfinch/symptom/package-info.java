/** What the owner of a board sees and hears: features read off display, lamp and sound. */
package faultfinch.symptom;

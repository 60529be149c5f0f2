/**
 * What a board is: placed parts, nets as trees of track, rails, firmware. Read from one text file
 * and checked against the drawings of the parts; a board here neither runs nor breaks.
 */
package faultfinch.board;

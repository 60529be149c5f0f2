package faultfinch.board;

/** A press of the exercise script; times in milliseconds since power-on. */
public record KeyPress(String ref, int atMilliseconds, int forMilliseconds) {}

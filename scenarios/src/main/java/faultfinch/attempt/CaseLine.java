package faultfinch.attempt;

/** One line of the list of cases. */
public record CaseLine(int number, String name, String title, String board) {}

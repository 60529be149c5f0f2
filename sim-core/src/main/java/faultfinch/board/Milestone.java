package faultfinch.board;

/**
 * A step of the firmware that a run reaches or does not: its label, a short name, what it means.
 */
public record Milestone(String label, String name, String says, int address) {}

package faultfinch.part;

/**
 * Something that can go wrong inside a part.
 *
 * @param name one word or a hyphenated few, unique in its part, used in a fault's text
 * @param says what it does, in plain words
 */
public record Defect(String name, String says) {}

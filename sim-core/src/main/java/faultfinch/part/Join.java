package faultfinch.part;

/**
 * A way through a two-terminal element.
 *
 * @param ohms resistance of the way, above 0
 * @param diode whether current goes only from the first terminal to the second
 */
public record Join(String from, String to, int ohms, boolean diode) {}

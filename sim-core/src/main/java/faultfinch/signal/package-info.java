/**
 * What a pin can carry and how a part sees its pins. Everything above speaks of parts and boards in
 * these words.
 */
package faultfinch.signal;

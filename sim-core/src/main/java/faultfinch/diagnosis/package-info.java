/**
 * From what was seen to what it means: the dictionary of every fault's signature, the belief over
 * candidates, the verdict on a hypothesis, and the next look worth its price.
 */
package faultfinch.diagnosis;

// Package hue gives out the colours of a stock so that wires can be told apart.
//
// Words. Two wires are apart where they must not have the same colour: they stand in one
// connector. A ring is a layer: one of its pieces, the tracer, must have a colour that no other
// of the ring has, so that whoever counts the pieces round it knows where to begin.
//
// To colour the wires of one connector with another at the far end of each is to colour the edges
// of a graph, which no quick method does in every case: so it is a search. It finds a colouring
// wherever there is one, as long as it does not run out of the steps that it is given; it says
// whether it did.
package hue

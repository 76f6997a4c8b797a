// Package ends is the phase of the ends of wires: cavities, splices, capped spares.
package ends

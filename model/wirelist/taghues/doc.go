// Package taghues finds the colours that stand at the end of the numbers of wires, "G201B22-WHT" beside "G201B22-ORN": the wires of a pair
// or of a cable have one number and are told apart by them.
//
// A tail is what stands behind the last sign of a number, letters alone; its stem is what stands before that sign. One tail alone is no
// colour: "PUMP-RED" may be the name of a pump.
package taghues

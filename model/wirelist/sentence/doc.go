// Package sentence reads the wires that a making guide tells in sentences, "Connect the red wire from the gauge to pin A3".
//
// A sentence tells a wire where it begins with a word for connecting, has two ends, and says a colour of the wire or a cavity. Every
// other sentence is none, and nothing is made of it. It looks at English alone.
package sentence

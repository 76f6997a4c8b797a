// Package compare says how two harnesses differ, as a person at the board would.
//
// Lists compares two revisions of a list: wire by wire and cavity by cavity. A
// termination is the same in both where its id or its name is, read without regard to
// case and signs; a splice where it joins most of the same cavities; a wire where its
// ends are, and only then where its signal or its id is, as lists number their wires
// as they like. What only one of the two lists has a place for (a column that the other
// does not have) is not compared, and Unstated names it.
//
// Disagreements compares what is joined to what: a harness as it is built against a
// list that somebody else made. It knows nets, not wires: a splice in one and a chain
// in the other are no difference.
//
// Two wires, or two nets, that changed places are one difference, a swap.
//
// Its words: a side is one of the two harnesses with the common names of its terminations
// and splices, those of the first; a placed wire is a wire with its ends by these names; a
// pair is a wire of the first list and the one of the second that it is; a net is all
// cavities that are joined, over splices and wires.
//
// It compares what two lists say, not what can be built; it reads no file, and it changes
// neither side.
package compare

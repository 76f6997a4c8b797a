// Package compare says how two harnesses differ, as a person at the board would.
//
// Between compares two revisions of a list: wire by wire and cavity by cavity. A
// termination is the same in both where its id or its name is, read without case, blanks and
// the signs that part words; else where most of its cavities hold the same; else where it is the only
// connector in both; else where most of its wires have the same ids, or the same signals. A
// splice is the same where it joins most of the same cavities, and so is a wire where its ends
// are, and only then where its signal or its id is, as lists number their wires as they like.
//
// Nothing passes for the same that nobody compared: the result counts the cavities of
// either list that the other has, and names what was not compared, such as a column that one list
// lacks or a row that its import left out. It says "no difference" only where all of both
// was compared. The order of rows, and a running number beside ids of their own, mean nothing.
//
// Disagreements compares what is joined to what: a harness as it is built against a
// list that somebody else made. It knows nets, not wires: a splice in one and a chain
// in the other are no difference. NotHeld and Held say what such a list cannot speak of.
//
// Two wires, or two nets, that changed places are one difference, a swap.
//
// Its words: a side is one of the two harnesses with the common names of its terminations
// and splices, those of the first; a placed wire is a wire with its ends by these names; a
// pair is a wire of the first list and the one of the second that it is; a net is all
// cavities that are joined, over splices and wires; a bare end is one that a list names without a
// cavity, "relay".
//
// It compares what two lists say, not what can be built; it reads no file, and it changes
// neither side.
package compare

// Package farheads makes a table of lines that are sorted by the part that their wires go to: the name of the part is the heading, and
// each line begins with a pin of the part and the cavity of the plug that all wires start at.
//
//	Everything comes from the main plug M.
//
//	## Fan relay
//	- 85 - M12, fan trigger, 20 ga, grey
//	- 86 - M13, relay feed, 20 ga, red
//
// It is asked before anyone looks for tables. It makes nothing of lines whose plug no text names, and none has a number of its own: "M12"
// is a bolt as well.
package farheads

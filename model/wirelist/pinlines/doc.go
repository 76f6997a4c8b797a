// Package pinlines makes a table of lines that begin with the cavities of one connector, with or without columns under each other:
//
//	J1 - DECK INTERFACE (12 way)
//	 1  VBAT      RED      18AWG   -> fuse F3
//	 3  CAN1H     YELLOW   22AWG   \ twisted
//	 4  CAN1L     GREEN    22AWG   /
//	 6-7  n.c.
//	 8  DOOR SW   WHT/RED  22AWG   -> door box J4-2
//
// Each line is read as it stands in the text, whatever its pieces were parted by, and each piece is asked what it is; a piece without
// a unit is a size, and letters are a colour, only where those of the other lines are. Where one line is not understood, or says
// a thing twice, all of them are left to the other packages. It is asked before anyone looks for tables.
package pinlines

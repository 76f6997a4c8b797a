// Package penned makes a table of lines that say of each cavity, one behind the other, the colour, a size without its unit, and in the
// words of a language what the wire is for and where it goes.
//
//	GB (8 vie)
//	 1 - R 2,5 - alla pompa, mandata
//	 2 - N/Bi 1 - a CT/2, sonda
//	 3 - libero
//
// All lines together say which language they are in. It is asked before anyone looks for tables.
package penned

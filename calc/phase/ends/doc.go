// Package ends is the phase of the ends of wires: what is in each cavity of a termination,
// which wires a splice joins and in what barrel, where a spare is capped. It stands on the
// wires and their ways.
//
//	reads Dia: Nominal, Origin
//	reads Reuse: All, Branches, Prior
//	reads Sheet: Cat, H, Index, Reuse, Snags, Wires
//	reads Wire: Dia, Entry, HasPath, Path
//	writes Cavity: Drain, Size, Wires
//	writes Sheet: SaidJoin, SaidListed, SaidTerm, Splices, Terms
//	writes Splice: Far, Fits, Given, Known, Near, Origin, Part, Wires
//	writes Term: Blank, Cavities, Contacts, Free, HasContacts, Reserved, SealPlugs, Sealed,
//	    Spare, State, Stubs, Used
package ends
